import * as z from 'zod/mini';
import { clubKindField, clubKinds } from '../golf/club.ts';
import { dateField, instantField } from '../golf/instant.ts';
import { swingField } from '../golf/swing.ts';
import { cleanText, idField, NAME_LIMIT, nameField } from '../golf/text.ts';
import type { Degrees } from '../units/degrees.ts';
import type { Metres } from '../units/metres.ts';
import { quantityField } from '../units/quantityField.ts';
import { quoted, type Reading, refused, WHOLE_FILE } from './refusal.ts';

const summaryCellSchema = z.object({
  swing: swingField,
  stock_m: quantityField<Metres>(1, 600),
  /** Half the width of the 80 % interval. */
  half80_m: quantityField<Metres>(0, 300),
  shots: z.int().check(z.gte(0), z.lte(200_000)),
  lastOn: z.nullable(dateField),
});

const summaryClubSchema = z.object({
  id: idField,
  kind: clubKindField,
  loft_deg: quantityField<Degrees>(0, 90),
  name: nameField,
  cells: z.array(summaryCellSchema).check(z.maxLength(40)),
});

/** The numbers of one book without a single shot: what a golfer may hand over in the stead of the logbook. */
export const bookSummarySchema = z.object({
  player: z.object({ id: idField, name: nameField, units: z.enum(['yards', 'metres']) }),
  asOf: instantField,
  clubs: z.array(summaryClubSchema).check(z.maxLength(60)),
});
export type BookSummary = z.infer<typeof bookSummarySchema>;

/** First line of the compact text: what it is, and its version. */
const HEAD = 'CARRYBOOK-SUMMARY 1';

/** Longest text of a summary, in UTF-16 units: every club of the largest bag with every swing fits. Own choice. */
export const SUMMARY_LENGTH = 200_000;

/** A name on its way through a line of fields: the field mark cannot stand in it. */
const field = (text: string): string =>
  cleanText(text)
    .replace(/[|\n\t]/g, ' ')
    .slice(0, NAME_LIMIT);

/**
 * A summary as a few short lines, small enough for QR codes: distances in tenths of a metre, dates as days
 * before the day of the book.
 */
export function summaryText({ player, asOf, clubs }: BookSummary): string {
  const day = Date.parse(asOf.slice(0, 10));
  const daysBefore = (date: string) => Math.round((day - Date.parse(date)) / 86_400_000);
  const lines = [HEAD, [player.id, player.units === 'yards' ? 'y' : 'm', asOf, field(player.name)].join('|')];
  for (const club of clubs) {
    const cells = club.cells.map(({ swing, stock_m, half80_m, shots, lastOn }) =>
      [
        swing === 'full' ? 'f' : swing,
        Math.round(stock_m * 10),
        Math.round(half80_m * 10),
        shots,
        lastOn === null ? '' : daysBefore(lastOn),
      ].join(','),
    );
    lines.push([club.id, clubKinds.indexOf(club.kind), club.loft_deg, field(club.name), cells.join(';')].join('|'));
  }
  return lines.join('\n');
}

function dayBefore(asOf: string, days: string): string | null {
  if (days === '') return null;
  const at = Date.parse(asOf.slice(0, 10)) - Number(days) * 86_400_000;
  // The range of years that a date of four digits can name.
  return Math.abs(at) < 250_000_000_000_000 ? new Date(at).toISOString().slice(0, 10) : 'no date';
}

/** Whether a text says of itself that it is a summary. */
export function isSummary(text: string): boolean {
  return text.trimStart().startsWith('CARRYBOOK-SUMMARY ');
}

/** Reads a summary's compact text; refused with the line that is wrong. */
export function readSummary(text: string): Reading<BookSummary> {
  if (text.length > SUMMARY_LENGTH) {
    return refused([
      { path: WHOLE_FILE, expected: `at most ${SUMMARY_LENGTH} characters of a summary`, found: `${text.length}` },
    ]);
  }
  const lines = text.replace(/[\r\n]+$/, '').split(/\r?\n/);
  const [head, whose = ''] = lines;
  if (head !== HEAD) return refused([{ path: 'line 1', expected: HEAD, found: quoted(head) }]);
  const [id, units, asOf = '', name] = whose.split('|');
  const clubs = lines.slice(2).map((line) => {
    const [clubId, kind, loft, clubName, cells = ''] = line.split('|');
    return {
      id: clubId,
      kind: clubKinds[Number(kind)],
      loft_deg: Number(loft),
      name: clubName,
      cells: cells
        .split(';')
        .filter((cell) => cell !== '')
        .map((cell) => {
          const [swing, stock, half, shots, days = ''] = cell.split(',');
          return {
            swing: swing === 'f' ? 'full' : swing,
            stock_m: Number(stock) / 10,
            half80_m: Number(half) / 10,
            shots: Number(shots),
            lastOn: dayBefore(asOf, days),
          };
        }),
    };
  });
  const read = bookSummarySchema.safeParse({
    player: { id, name, units: units === 'y' ? 'yards' : units === 'm' ? 'metres' : units },
    asOf,
    clubs,
  });
  if (read.success) return { kind: 'read', value: read.data };
  const [first, place] = read.error.issues[0].path;
  const line = first === 'clubs' ? 3 + Number(place ?? 0) : 2;
  return refused([
    {
      path: `line ${line}`,
      expected: 'the fields of a summary',
      found: quoted(lines[line - 1] ?? 'nothing'),
    },
  ]);
}
