import type { LeaveTable } from './coverage.ts';

/** A club that may be in the bag. Of one `group` (a club at its loft, or bent) at most one is taken. */
export interface BagCandidate {
  readonly id: string;
  /** Places of its club × swing in the leave table. */
  readonly cells: readonly number[];
  /** Stays in the bag whatever it costs. */
  readonly locked: boolean;
  readonly group: string;
}

/** The clubs to choose from, ready for the search: each with its least leave from every distance. */
export interface ReadyCandidates {
  readonly candidates: readonly BagCandidate[];
  /** Least leave of each club from each distance, m. */
  readonly leave_m: readonly Float64Array[];
  readonly weight: Float64Array;
  /** Number of the group of each club. */
  readonly group: Int32Array;
  /** How many clubs the bag will hold, and places of the locked ones. */
  readonly size: number;
  readonly locked: readonly number[];
}

/**
 * Puts the clubs in order of their ids, so that the order given does not matter, and works out what
 * each alone leaves. The bag is filled as far as it goes, since one more club never leaves more.
 *
 * @param limit most clubs beside the putter.
 * @throws RangeError when an id comes twice, a club has no cell, or the locked clubs alone break the limit.
 */
export function readyCandidates(table: LeaveTable, given: readonly BagCandidate[], limit: number): ReadyCandidates {
  const candidates = given.toSorted((a, b) => (a.id < b.id ? -1 : 1));
  const groups = new Map<string, number>();
  const points = table.approaches.distance_m.length;
  const leave_m = candidates.map(({ id, cells }, i) => {
    if (i > 0 && candidates[i - 1].id === id) throw new RangeError(`club ${id} comes twice`);
    if (cells.length === 0) throw new RangeError(`club ${id} has no swing: 0 cells`);
    return Float64Array.from({ length: points }, (_, d) => Math.min(...cells.map((cell) => table.leave_m[cell][d])));
  });
  const group = Int32Array.from(candidates, (candidate) => {
    const number = groups.get(candidate.group) ?? groups.size;
    groups.set(candidate.group, number);
    return number;
  });
  const locked = candidates.flatMap((candidate, i) => (candidate.locked ? [i] : []));
  if (locked.length > limit) throw new RangeError(`${locked.length} clubs are locked: the bag holds ${limit}`);
  if (new Set(locked.map((i) => group[i])).size < locked.length) {
    throw new RangeError('one club is locked at two lofts: a bag holds it once');
  }
  const size = Math.min(limit, groups.size);
  if (size < 1) throw new RangeError(`${candidates.length} clubs for ${limit} places: at least one of each is needed`);
  return { candidates, leave_m, weight: table.approaches.weight, group, size, locked };
}

/** How many different bags there are: the coefficient of x^k in Π (1 + g x) over groups of g free clubs. */
export function countBags({ candidates, group, size, locked }: ReadyCandidates): number {
  const taken = new Set(locked.map((i) => group[i]));
  const sizes = new Map<number, number>();
  candidates.forEach((_, i) => {
    if (!taken.has(group[i])) sizes.set(group[i], (sizes.get(group[i]) ?? 0) + 1);
  });
  const free = size - locked.length;
  const ways = new Float64Array(free + 1);
  ways[0] = 1;
  for (const g of sizes.values()) for (let k = free; k > 0; k--) ways[k] += g * ways[k - 1];
  return ways[free];
}
