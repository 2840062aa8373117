import type { Logbook } from '../golf/logbook.ts';
import { metres } from '../units/metres.ts';
import type { BagWarning } from '../yardages/bagWarnings.ts';
import type { Settling } from '../yardages/gapSettling.ts';
import type { Rate } from '../yardages/putting.ts';
import type { AimSheet } from './aimReport.ts';
import type { BagDifference } from './bagChoice.ts';
import type { BagSheet } from './bagReport.ts';
import type { PlanSheets } from './planSheets.ts';
import type { PracticeSheet } from './practiceReport.ts';
import type { PuttingRows } from './puttingReport.ts';
import type { SpokenLength } from './spokenLength.ts';
import { section, textTable } from './textTable.ts';

/** Lengths, names and shares as they are said to this golfer. */
interface Words {
  readonly unit: string;
  length(length_m: number, digits?: number): string;
  name(clubId: string | null): string;
}

const percent = (share: number) => `${(share * 100).toFixed(0)} %`;
const signed = (text: string) => (text.startsWith('-') ? text.replace('-', '−') : `+${text}`);

/**
 * The plan sheets as lines for people: bag, aim, practice and putting. Every figure stands with its
 * interval or with the shots it rests on.
 */
export function planText(logbook: Logbook, sheets: PlanSheets, spoken: SpokenLength): string[] {
  const names = new Map(logbook.clubs.map(({ id, name }) => [id, name]));
  const words: Words = {
    unit: spoken.unit,
    length: (length_m, digits = 0) => spoken.of(metres(length_m)).toFixed(digits),
    name: (clubId) => (clubId === null ? 'no putter noted' : names.get(clubId) || clubId),
  };
  return [
    ...bagLines(sheets.bag, words),
    ...aimLines(sheets.aim, words),
    ...practiceLines(sheets.practice, words),
    ...section('Putting', puttingLines(sheets.putting.all, words)),
    ...(sheets.putting.byPutter.length < 2
      ? []
      : sheets.putting.byPutter.flatMap((rows) =>
          section(`Putting with ${words.name(rows.clubId)}, build ${rows.specId ?? '–'}`, puttingLines(rows, words)),
        )),
  ];
}

function bagLines({ warnings, changes, gaps, coverage, best, swingOrClub }: BagSheet, words: Words): string[] {
  const { length, name } = words;
  const changed = changes.map((change) => [
    `${name(change.clubId)} ${change.swing}`,
    change.from,
    `${signed(change.loftChange_deg.toFixed(1))}°`,
    `${length(change.before_m)} (${change.shotsBefore})`,
    `${length(change.after_m)} (${change.shotsAfter})`,
    signed(length(change.change_m)),
    `${length(change.lo80_m)} to ${length(change.hi80_m)}`,
    percent(change.pChanged),
    change.verdict,
  ]);
  const settled = gaps.map((gap) => [
    `${name(gap.longer)} – ${name(gap.shorter)}`,
    `${gap.loftGap_deg.toFixed(1)}°`,
    `${length(gap.gap_m)}`,
    gap.verdict,
    `${gap.shotsLonger} and ${gap.shotsShorter}`,
    settlingWords(gap.settling),
  ]);
  const covered = coverage.map((one) => [
    one.tees ?? 'all rounds',
    `${one.rounds}`,
    `${one.approaches}`,
    length(one.leave_m, 1),
    `± ${length(one.deviation_m, 1)}`,
    length(one.step_m, 1),
  ]);
  const change = ['club', 'from', 'loft', 'before (shots)', 'after (shots)', 'change', '80 %', 'changed', 'in words'];
  return [
    ...section(
      'Bag: look at',
      warnings.map((warning) => `  ${warningWords(warning, words)}`),
    ),
    ...section('Bag: changes of build', changed.length === 0 ? [] : textTable([change, ...changed], [0, 1, 8])),
    ...section(
      'Bag: gaps beside lofts',
      settled.length === 0
        ? []
        : textTable([['clubs', 'loft', 'carry', 'in words', 'shots', 'to settle it'], ...settled], [0, 3, 4, 5]),
    ),
    ...section(
      'Bag: how it covers the distances faced (expected leave; distance from the number to the nearest stock carry)',
      covered.length === 0 ? [] : textTable([['tees', 'rounds', 'approaches', 'leave', '±', 'step'], ...covered], [0]),
    ),
    ...section('Bag: one more swing or one more club, after 40 balls', swingOrClubLines(swingOrClub, words)),
    ...section(
      'Bag: best fourteen of the clubs owned',
      best === null
        ? []
        : [
            `  ${best.best.ids.map(name).join(', ')}`,
            `  leave ${length(best.best.leave_m, 2)}; ${best.nearCount} within a tenth of a yard; ${best.proven ? 'proven' : 'not proven'} over ${best.bags} bags`,
            ...(best.againstPresent === null
              ? ['  the bag holds more than fourteen clubs: nothing to compare with']
              : [`  against the bag as it is: ${differenceWords(best.againstPresent, words)}`]),
          ],
    ),
  ];
}

function swingOrClubLines({ swing, club, swingOverClub }: BagSheet['swingOrClub'], words: Words): string[] {
  return [
    ...(swing ? [`  ${words.name(swing.clubId)} ${swing.swing}: ${differenceWords(swing.difference, words)}`] : []),
    ...(club ? [`  ${club.kind} of ${club.loft_deg}°: ${differenceWords(club.difference, words)}`] : []),
    ...(swingOverClub ? [`  the swing against the club: ${differenceWords(swingOverClub, words)}`] : []),
  ];
}

function differenceWords({ gain_m, deviation_m, verdict }: BagDifference, { length }: Words): string {
  return `${verdict} (leaves ${signed(length(-gain_m, 2))} ± ${length(deviation_m, 2)})`;
}

function warningWords(warning: BagWarning, { name, length }: Words): string {
  switch (warning.kind) {
    case 'too many':
      return `${warning.clubs} clubs in the bag: ${warning.over} over fourteen`;
    case 'duplicate':
      return `${name(warning.clubId)} and ${name(warning.otherId)}: one kind, one loft`;
    case 'loft and carry disagree':
      return `${name(warning.clubId)} has more loft than ${name(warning.otherId)} and carries ${length(warning.further_m)} ± ${length(warning.deviation_m)} further (${percent(warning.probability)})`;
  }
}

function settlingWords(settling: Settling): string {
  if (settling.kind === 'settled') return '–';
  const most = settling.kind === 'more than' ? 'more than ' : 'about ';
  return `${most}${settling.shots} shots`;
}

function aimLines({ rows, flag, risk, green }: AimSheet, { name, length }: Words): string[] {
  const table = rows.map((row) => [
    `${name(row.clubId)} ${row.swing}`,
    length(row.ellipse.deep_m),
    length(row.ellipse.wide_m),
    `× ${row.ellipse.within.toFixed(2)}`,
    `${row.dots}`,
    ...row.odds.map(({ holds }) => percent(holds)),
  ]);
  const from = rows[0]?.odds.map(({ lie, shots }) => `${lie} (${shots})`) ?? [];
  const size = `${length(green.deep_m)} deep and ${length(green.wide_m)} wide`;
  const upTo = flag.clubId === null ? 'with no club' : `up to ${name(flag.clubId)} ${flag.swing}`;
  return section(
    `Aim: 80 % of balls, and odds to hold a green ${size} from each lie (shots from there)`,
    table.length === 0
      ? []
      : [
          ...textTable([['club', 'deep', 'wide', 'within', 'balls', ...from], ...table], [0]),
          `  flag ${length(green.flagFromFront_m)} on: at it ${upTo}, at a risk of ${percent(risk)}; else the middle`,
        ],
  );
}

function practiceLines({ plans }: PracticeSheet, { name, length }: Words): string[] {
  return plans.flatMap(({ balls, rungs }) =>
    section(
      `Practice: ${balls} balls on the wedge ladder`,
      textTable(
        [
          ['club', 'balls', '± now', '± after', 'shots so far'],
          ...rungs.map((rung) => [
            `${name(rung.clubId)} ${rung.swing}`,
            `${rung.balls}`,
            length(rung.before_m, 1),
            length(rung.after_m, 1),
            `${rung.shots}`,
          ]),
        ],
        [0],
      ),
    ),
  );
}

function puttingLines({ holes, putts, angle, made, first }: PuttingRows, { length, unit }: Words): string[] {
  if (putts === 0) return [];
  const span = (from_m: number, to_m: number | null) =>
    to_m === null ? `over ${length(from_m, 1)}` : `${length(from_m, 1)} to ${length(to_m, 1)}`;
  const interval = ({ rate, lo80, hi80, of }: Rate) => [percent(rate), `${percent(lo80)} to ${percent(hi80)}`, `${of}`];
  const sigma = `${angle.sigma_deg.toFixed(2)}° (${angle.lo80_deg.toFixed(2)} to ${angle.hi80_deg.toFixed(2)})`;
  return [
    `  ${putts} putts of known length on ${holes} holes; angle ${sigma}`,
    ...textTable(
      [
        [`length, ${unit}`, 'holed', '80 %', 'putts', 'angle model'],
        ...made.map((row) => [span(row.from_m, row.to_m), ...interval(row.made), percent(row.expected)]),
      ],
      [0],
    ),
    ...textTable(
      [
        ['first putt', 'left', '80 %', 'of', 'three putts', '80 %', 'holes'],
        ...first.map(({ from_m, to_m, leave, threePutts }) => [
          span(from_m, to_m),
          ...(leave
            ? [length(leave.mean_m, 1), `${length(leave.lo80_m, 1)} to ${length(leave.hi80_m, 1)}`, `${leave.of}`]
            : ['–', '–', '–']),
          ...interval(threePutts),
        ]),
      ],
      [0],
    ),
  ];
}
