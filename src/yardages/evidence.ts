import { type Cell, loftAboveAnchor, logSwingFraction, scatterFactor } from './cell.ts';
import { PRIOR } from './priorTable.ts';
import { SHARED_COUNT } from './sharedEffects.ts';

/** What the golfer said of the strike: nothing, solid, or a mishit. */
export type StrikeWord = 'none' | 'solid' | 'mishit';

/**
 * One shot as evidence about a cell.
 *
 * `logLeast` and `logMost` bound ln(carry in m) after known offsets are taken out: equal for a
 * measured carry; apart for "cleared" and "short of" (−Infinity or Infinity where open).
 * `variance` is of ln carry: measurement, ground, lie and adjustment together, not the golfer's own
 * scatter. `shared` lists pairs of [index, loading] of shared effects.
 */
export interface ShotEvidence {
  readonly cell: number;
  readonly day: number;
  readonly logLeast: number;
  readonly logMost: number;
  readonly variance: number;
  readonly word: StrikeWord;
  readonly shared: readonly (readonly [index: number, loading: number])[];
}

/** A golfer's own number for a cell: ln of the claimed carry in m. */
export interface Claim {
  readonly cell: number;
  readonly logCarry: number;
}

/** Most shared effects one shot can load on: every step of the drift and every named effect. */
const MOST_SHARED = SHARED_COUNT;

/** All evidence of one golfer as flat arrays, in the order given. */
export interface EvidenceArrays {
  readonly count: number;
  readonly days: number;
  readonly cell: Int32Array;
  readonly day: Int32Array;
  readonly logLeast: Float64Array;
  readonly logMost: Float64Array;
  readonly variance: Float64Array;
  /** 0 none, 1 solid, 2 mishit. */
  readonly word: Uint8Array;
  readonly sharedCount: Uint8Array;
  /** Row-major, `sharedWidth` a shot. */
  readonly sharedIndex: Uint8Array;
  readonly sharedLoading: Float64Array;
  readonly sharedWidth: number;
}

const WORD_CODE: Record<StrikeWord, number> = { none: 0, solid: 1, mishit: 2 };

/** Lays the evidence out in typed arrays. Days are renumbered from 0; their order does not matter. */
export function packEvidence(shots: readonly ShotEvidence[]): EvidenceArrays {
  const count = shots.length;
  const dayNumbers = new Map<number, number>();
  const packed: EvidenceArrays = {
    count,
    days: 0,
    cell: new Int32Array(count),
    day: new Int32Array(count),
    logLeast: new Float64Array(count),
    logMost: new Float64Array(count),
    variance: new Float64Array(count),
    word: new Uint8Array(count),
    sharedCount: new Uint8Array(count),
    sharedIndex: new Uint8Array(count * MOST_SHARED),
    sharedLoading: new Float64Array(count * MOST_SHARED),
    sharedWidth: MOST_SHARED,
  };
  shots.forEach((shot, k) => {
    const bothOpen = shot.logLeast === Number.NEGATIVE_INFINITY && shot.logMost === Number.POSITIVE_INFINITY;
    if (bothOpen || !(shot.logLeast <= shot.logMost) || !(shot.variance > 0)) {
      throw new RangeError(`no evidence: ln carry ${shot.logLeast} to ${shot.logMost}, variance ${shot.variance}`);
    }
    let day = dayNumbers.get(shot.day);
    if (day === undefined) {
      day = dayNumbers.size;
      dayNumbers.set(shot.day, day);
    }
    packed.cell[k] = shot.cell;
    packed.day[k] = day;
    packed.logLeast[k] = shot.logLeast;
    packed.logMost[k] = shot.logMost;
    packed.variance[k] = shot.variance;
    packed.word[k] = WORD_CODE[shot.word];
    packed.sharedCount[k] = shot.shared.length;
    shot.shared.forEach(([index, loading], s) => {
      packed.sharedIndex[k * MOST_SHARED + s] = index;
      packed.sharedLoading[k * MOST_SHARED + s] = loading;
    });
  });
  return { ...packed, days: dayNumbers.size };
}

/** What the strike mixture needs to know of each cell. */
export interface CellTraits {
  /** M² of the swing length: variance of a solid strike against a full swing. */
  readonly scatter2: Float64Array;
  /** Mishit rate against that of the anchor loft. */
  readonly mishitFactor: Float64Array;
  /** 1 for a full swing, else 0. */
  readonly full: Uint8Array;
  /** ln carry of the next longer and next shorter swing length minus this one's; 0: there is none. */
  readonly longerSwing: Float64Array;
  readonly shorterSwing: Float64Array;
}

/** Reads the traits off the cells. Neighbouring swing lengths are those of PRIOR and full. */
export function cellTraits(cells: readonly Cell[]): CellTraits {
  const ladder = [...PRIOR.swingFraction.map(Math.log), 0];
  const traits: CellTraits = {
    scatter2: new Float64Array(cells.length),
    mishitFactor: new Float64Array(cells.length),
    full: new Uint8Array(cells.length),
    longerSwing: new Float64Array(cells.length),
    shorterSwing: new Float64Array(cells.length),
  };
  cells.forEach((cell, i) => {
    const g = logSwingFraction(cell.swing);
    const partialPlayed = cells.some((other) => other.club === cell.club && other.swing !== 'full');
    traits.scatter2[i] = scatterFactor(cell.swing) ** 2;
    traits.mishitFactor[i] = Math.max(0.3, 1 - PRIOR.mishitPerDegree * loftAboveAnchor(cell));
    traits.full[i] = cell.swing === 'full' ? 1 : 0;
    if (!partialPlayed) return;
    const longer = ladder.find((rung) => rung > g + 0.01);
    const shorter = ladder.findLast((rung) => rung < g - 0.01);
    traits.longerSwing[i] = longer === undefined ? 0 : longer - g;
    traits.shorterSwing[i] = shorter === undefined ? 0 : shorter - g;
  });
  return traits;
}
