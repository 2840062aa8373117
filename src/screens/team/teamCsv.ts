import type { TeamColumn, TeamRow } from '../../book/teamTable.ts';
import { type DistanceUnit, inUnit } from '../distance.ts';
import { teamWords } from '../words/team.ts';
import { teamCareWords } from '../words/teamCare.ts';

const words = teamCareWords.sheet;

const tenth = (value: number): string => (Math.round(value * 10) / 10).toFixed(1);

/**
 * The team's table as lines for a spreadsheet, a number a line. A text that a spreadsheet would take for a
 * formula gets an apostrophe before it.
 *
 * Source: OWASP, CSV Injection (cells that begin with = + - @ TAB CR), from memory; RFC 4180 for quoting.
 */
export async function teamCsv(
  columns: readonly TeamColumn[],
  rows: readonly TeamRow[],
  names: ReadonlyMap<string, string>,
  unit: DistanceUnit,
): Promise<string> {
  // Fetched only when a file is wanted, to keep the first load small.
  const { unparse } = (await import('papaparse')).default;
  const lines = rows.flatMap(({ member, cells }) =>
    columns.flatMap(({ club, swing }, i) => {
      const { state, number } = cells[i];
      if (state === 'no club') return [];
      return [
        [
          names.get(member.playerId) ?? '',
          teamWords.club(club),
          swing,
          number ? tenth(inUnit(number.stock_m, unit)) : '',
          number ? tenth(inUnit(number.lo80_m, unit)) : '',
          number ? tenth(inUnit(number.hi80_m, unit)) : '',
          unit,
          String(number?.shots ?? 0),
          number?.lastOn ?? '',
          words.notes[state],
        ],
      ];
    }),
  );
  return `${unparse([[...words.headings], ...lines], { escapeFormulae: /^[=+\-@\t\r\n]/ })}\r\n`;
}
