import { specOn } from '../golf/club.ts';
import type { Logbook } from '../golf/logbook.ts';
import { mean, standardDeviation } from '../statistics/mean.ts';
import { DEVIATE_80 } from '../yardages/gaps.ts';
import { holingOdds, type PuttingAngle, type PuttTally, puttingAngle, type Rate, rateOf } from '../yardages/putting.ts';

/** Edges of the lengths that putts are told by, m: about 3, 6, 10, 15, 25 and 40 ft. Own choice. */
const EDGES = [0, 1, 2, 3, 4.5, 7.5, 12, Number.POSITIVE_INFINITY];

/** Putts of one span of lengths: the share holed, with the model's beside it. */
export interface MakeRow {
  readonly from_m: number;
  /** null: no limit. */
  readonly to_m: number | null;
  readonly made: Rate;
  /** What the angle model expects of the same putts. */
  readonly expected: number;
}

/** First putts of one span of lengths. */
export interface FirstPuttRow {
  readonly from_m: number;
  readonly to_m: number | null;
  readonly holes: number;
  /** Mean length left where it was not holed, with the 80 % interval of the mean; null below two of them. */
  readonly leave: {
    readonly mean_m: number;
    readonly lo80_m: number;
    readonly hi80_m: number;
    readonly of: number;
  } | null;
  readonly threePutts: Rate;
}

/** The putts of one putter as it was built in one span of time, or of all together. */
export interface PuttingRows {
  /** null: all putts together, or putts without a putter noted. */
  readonly clubId: string | null;
  readonly specId: string | null;
  readonly holes: number;
  readonly putts: number;
  readonly angle: PuttingAngle;
  readonly made: readonly MakeRow[];
  readonly first: readonly FirstPuttRow[];
}

export interface PuttingSheet {
  readonly all: PuttingRows;
  readonly byPutter: readonly PuttingRows[];
}

/** The putts of one hole in the order played, those of known length with their lengths. */
interface PuttedHole {
  readonly clubId: string | null;
  readonly specId: string | null;
  readonly putts: readonly { readonly length_m: number | null; readonly holed: boolean }[];
  readonly finished: boolean;
}

/**
 * How a golfer putts: the angle model's one number, the share holed by length against it, what a first
 * putt leaves, and how often three are needed by the length of the first; for all putts, and for every
 * putter as it was built at the time. Only putts with a length count towards a length.
 *
 * @param asOf instant; rounds after it are left out.
 */
export function puttingReport(logbook: Logbook, asOf: string): PuttingSheet {
  const putters = new Map(logbook.clubs.filter(({ kind }) => kind === 'putter').map((club) => [club.id, club]));
  const holes = logbook.rounds
    .filter(({ date, play }) => play !== 'practice ground' && Date.parse(date) <= Date.parse(asOf))
    .flatMap((round) =>
      round.holes.flatMap(({ putts }): PuttedHole[] => {
        if (putts.length === 0) return [];
        const putter = putters.get(putts[0].clubId ?? '');
        return [
          {
            clubId: putter?.id ?? null,
            specId: putter ? specOn(putter, round.date).id : null,
            putts: putts.map(({ length_m, holed }) => ({ length_m: length_m === 0 ? null : length_m, holed })),
            finished: putts[putts.length - 1].holed,
          },
        ];
      }),
    );
  const keys = [...new Set(holes.map(({ clubId, specId }) => `${clubId ?? ''}|${specId ?? ''}`))].sort();
  return {
    all: rowsOf(null, null, holes),
    byPutter: keys.map((key) => {
      const those = holes.filter(({ clubId, specId }) => `${clubId ?? ''}|${specId ?? ''}` === key);
      return rowsOf(those[0].clubId, those[0].specId, those);
    }),
  };
}

function rowsOf(clubId: string | null, specId: string | null, holes: readonly PuttedHole[]): PuttingRows {
  const putts = holes.flatMap((hole) =>
    hole.putts.flatMap(({ length_m, holed }) => (length_m === null ? [] : [{ length_m, holed }])),
  );
  const angle = puttingAngle(talliesOf(putts));
  return {
    clubId,
    specId,
    holes: holes.length,
    putts: putts.length,
    angle,
    made: spans((from_m, to_m) => makeRow(from_m, to_m, putts, angle.sigma_deg)),
    first: spans((from_m, to_m) => firstPuttRow(from_m, to_m, holes)),
  };
}

function spans<Row>(rowOf: (from_m: number, to_m: number) => Row | null): Row[] {
  return EDGES.slice(1).flatMap((to_m, k) => {
    const row = rowOf(EDGES[k], to_m);
    return row === null ? [] : [row];
  });
}

const limit = (to_m: number) => (Number.isFinite(to_m) ? to_m : null);

function talliesOf(putts: readonly { length_m: number; holed: boolean }[]): PuttTally[] {
  const tallies = new Map<number, { length_m: number; tried: number; made: number }>();
  for (const { length_m, holed } of putts) {
    const tally = tallies.get(length_m) ?? { length_m, tried: 0, made: 0 };
    tally.tried++;
    if (holed) tally.made++;
    tallies.set(length_m, tally);
  }
  return [...tallies.values()].sort((a, b) => a.length_m - b.length_m);
}

function makeRow(
  from_m: number,
  to_m: number,
  putts: readonly { length_m: number; holed: boolean }[],
  sigma_deg: number,
): MakeRow | null {
  const those = putts.filter(({ length_m }) => length_m > from_m && length_m <= to_m);
  if (those.length === 0) return null;
  return {
    from_m,
    to_m: limit(to_m),
    made: rateOf(those.filter(({ holed }) => holed).length, those.length),
    expected: mean(those.map(({ length_m }) => holingOdds(length_m, sigma_deg))),
  };
}

function firstPuttRow(from_m: number, to_m: number, holes: readonly PuttedHole[]): FirstPuttRow | null {
  const those = holes.filter(({ putts, finished }) => {
    const { length_m } = putts[0];
    return finished && length_m !== null && length_m > from_m && length_m <= to_m;
  });
  if (those.length === 0) return null;
  const leaves = those.flatMap(({ putts }) =>
    putts.length > 1 && putts[1].length_m !== null ? [putts[1].length_m] : [],
  );
  return {
    from_m,
    to_m: limit(to_m),
    holes: those.length,
    leave: leaves.length < 2 ? null : leaveOf(leaves),
    threePutts: rateOf(those.filter(({ putts }) => putts.length >= 3).length, those.length),
  };
}

function leaveOf(leaves: readonly number[]): NonNullable<FirstPuttRow['leave']> {
  const mean_m = mean(leaves);
  const half = (DEVIATE_80 * standardDeviation(leaves)) / Math.sqrt(leaves.length);
  return { mean_m, lo80_m: Math.max(0, mean_m - half), hi80_m: mean_m + half, of: leaves.length };
}
