import { type BagCandidate, countBags, type ReadyCandidates, readyCandidates } from './bagCandidates.ts';
import type { LeaveTable } from './coverage.ts';
import { swappedBag } from './swappedBag.ts';

/** Bags within this of the best are as good as it, m: .1 yd. */
export const NEAR = 0.09144;
/** Up to so many bags every one is looked at; beyond it those that cannot be best are passed over. */
const ENUMERATED = 100_000;
/** A search that has looked at so many branches stops and says that it is not proven. */
const MOST_BRANCHES = 3_000_000;
/** Branches between two reports of progress. */
const REPORT_EVERY = 4096;
/** Near-equal bags that are told; the rest are only counted. */
const MOST_TOLD = 50;

/** One bag: ids of its clubs in order, and D, the expected leave over the golfer's distances, m. */
export interface Bag {
  readonly ids: readonly string[];
  readonly leave_m: number;
}

export interface BagProgress {
  readonly looked: number;
  /** How many bags there are in all. */
  readonly bags: number;
  readonly best_m: number;
}

export interface BestBag {
  readonly best: Bag;
  /** Bags within {@link NEAR} of the best, the best first; at most 50 of `nearCount`. */
  readonly near: readonly Bag[];
  readonly nearCount: number;
  /** Every bag was looked at or ruled out by a bound. */
  readonly proven: boolean;
  readonly how: 'every bag' | 'branch and bound';
  readonly looked: number;
  readonly bags: number;
}

/**
 * The best bag of at most `limit` clubs beside the putter: the one with the least expected leave D,
 * and all that are as good within .1 yd. Up to 100,000 bags every one is looked at. Beyond it a greedy
 * bag improved by swaps gives the mark, and branches are cut whose bound is worse: the larger of D with
 * every club still to come, and of D less the largest single gains (D is submodular in the clubs).
 *
 * A generator: `next()` does a slice of the work and yields its progress, so that a worker can report
 * it and be stopped between slices; the answer is the value returned. Does not depend on chance, nor
 * on the order of the clubs.
 *
 * @throws RangeError as {@link readyCandidates}.
 * Source: Nemhauser, Wolsey & Fisher (1978), Mathematical Programming 14, 265–294 (greedy, bound);
 * Land & Doig (1960), Econometrica 28, 497–520 (branch and bound).
 */
export function* bestBag(
  table: LeaveTable,
  given: readonly BagCandidate[],
  limit: number,
  enumerated: number = ENUMERATED,
): Generator<BagProgress, BestBag, void> {
  const ready = readyCandidates(table, given, limit);
  const bags = countBags(ready);
  const every = bags <= enumerated;
  const start = swappedBag(ready);
  const search = new BagSearch(ready, start.order, every, start.leave_m);
  while (search.look(REPORT_EVERY)) yield { looked: search.looked, bags, best_m: search.best_m };
  const near = search.found
    .filter(({ leave_m }) => leave_m <= search.best_m + NEAR)
    .sort((a, b) => a.leave_m - b.leave_m || (a.ids.join() < b.ids.join() ? -1 : 1));
  return {
    best: near[0],
    near: near.slice(0, MOST_TOLD),
    nearCount: near.length,
    proven: search.proven,
    how: every ? 'every bag' : 'branch and bound',
    looked: search.looked,
    bags,
  };
}

/** A walk over the bags, club by club in a fixed order, that can be left and taken up again. */
class BagSearch {
  looked = 0;
  best_m: number;
  proven = true;
  found: Bag[] = [];
  private readonly ready: ReadyCandidates;
  /** Free clubs in the order they are tried. */
  private readonly order: readonly number[];
  private readonly every: boolean;
  private readonly points: number;
  private readonly free: number;
  /** Least leave of the clubs from place i of the order on. */
  private readonly toCome: Float64Array[];
  private readonly curves: Float64Array[];
  private readonly next: Int32Array;
  private readonly chosen: Int32Array;
  private readonly groupTaken: Uint8Array;
  private depth = 0;

  constructor(ready: ReadyCandidates, order: readonly number[], every: boolean, mark_m: number) {
    this.ready = ready;
    this.every = every;
    this.best_m = mark_m;
    this.points = ready.weight.length;
    this.free = ready.size - ready.locked.length;
    this.groupTaken = new Uint8Array(ready.candidates.length);
    for (const i of ready.locked) this.groupTaken[ready.group[i]] = 1;
    this.order = order.filter((i) => !this.groupTaken[ready.group[i]]);
    this.curves = Array.from({ length: this.free + 1 }, () => new Float64Array(this.points).fill(Infinity));
    for (const i of ready.locked) this.lower(this.curves[0], this.curves[0], ready.leave_m[i]);
    this.toCome = [new Float64Array(this.points).fill(Infinity)];
    for (let at = this.order.length - 1; at >= 0; at--) {
      const curve = new Float64Array(this.points);
      this.lower(curve, this.toCome[0], ready.leave_m[this.order[at]]);
      this.toCome.unshift(curve);
    }
    this.next = new Int32Array(this.free + 1);
    this.chosen = new Int32Array(this.free);
    if (this.free === 0) this.keep(this.worth(this.curves[0]));
    else if (!Number.isFinite(this.best_m)) throw new RangeError(`no bag of ${ready.size} clubs to begin with`);
  }

  /** Looks at so many branches; false when none is left. */
  look(branches: number): boolean {
    if (this.free === 0) return false;
    const until = this.looked + branches;
    while (this.looked < until) {
      if (this.next[this.depth] > this.order.length - (this.free - this.depth)) {
        if (this.depth === 0) return false;
        this.depth--;
        this.groupTaken[this.ready.group[this.order[this.chosen[this.depth]]]] = 0;
        continue;
      }
      this.branch(this.next[this.depth]++);
      if (this.looked >= MOST_BRANCHES && !this.every) {
        this.proven = false;
        return false;
      }
    }
    return true;
  }

  /** Takes the club at a place of the order as the next of the bag. */
  private branch(at: number): void {
    const club = this.order[at];
    const group = this.ready.group[club];
    if (this.groupTaken[group]) return;
    this.looked++;
    const { depth } = this;
    const curve = this.curves[depth + 1];
    this.lower(curve, this.curves[depth], this.ready.leave_m[club]);
    this.chosen[depth] = at;
    if (depth + 1 === this.free) {
      this.keep(this.worth(curve));
      return;
    }
    if (!this.every && this.bound(curve, at + 1, this.free - depth - 1) > this.best_m + NEAR) return;
    this.groupTaken[group] = 1;
    this.depth++;
    this.next[this.depth] = at + 1;
  }

  /** What no bag with these clubs and `more` of those to come can do better than, m. */
  private bound(curve: Float64Array, from: number, more: number): number {
    const { weight, leave_m } = this.ready;
    let now = 0;
    let all = 0;
    for (let d = 0; d < this.points; d++) {
      now += weight[d] * curve[d];
      all += weight[d] * Math.min(curve[d], this.toCome[from][d]);
    }
    if (all > this.best_m + NEAR) return all;
    const gains: number[] = [];
    for (let at = from; at < this.order.length; at++) {
      const leave = leave_m[this.order[at]];
      let gain = 0;
      for (let d = 0; d < this.points; d++) if (leave[d] < curve[d]) gain += weight[d] * (curve[d] - leave[d]);
      gains.push(gain);
    }
    gains.sort((a, b) => b - a);
    return Math.max(all, now - gains.slice(0, more).reduce((sum, gain) => sum + gain, 0));
  }

  private keep(leave_m: number): void {
    if (leave_m > this.best_m + NEAR) return;
    const places = [...this.ready.locked, ...Array.from(this.chosen, (at) => this.order[at])];
    const ids = places.map((i) => this.ready.candidates[i].id).sort();
    this.found.push({ ids, leave_m });
    if (leave_m >= this.best_m) return;
    this.best_m = leave_m;
    this.found = this.found.filter((bag) => bag.leave_m <= leave_m + NEAR);
  }

  private lower(into: Float64Array, curve: Float64Array, leave: Float64Array): void {
    for (let d = 0; d < this.points; d++) into[d] = Math.min(leave[d], curve[d]);
  }

  private worth(curve: Float64Array): number {
    let sum = 0;
    for (let d = 0; d < this.points; d++) sum += this.ready.weight[d] * curve[d];
    return sum;
  }
}
