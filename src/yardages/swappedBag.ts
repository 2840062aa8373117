import type { ReadyCandidates } from './bagCandidates.ts';

/**
 * A good bag quickly: clubs are taken one by one, each time the one that lessens the expected leave
 * most, then exchanged one for one as long as that helps. At least 1 − 1/e of the best possible gain.
 *
 * @returns its expected leave, m, and all clubs in the order taken, the rest after them by what each alone leaves.
 * Source: Nemhauser, Wolsey & Fisher (1978), Mathematical Programming 14, 265–294.
 */
export function swappedBag(ready: ReadyCandidates): { order: number[]; leave_m: number } {
  const { candidates, size, locked, group } = ready;
  const all = candidates.map((_, i) => i);
  let bag = [...locked];
  const fits = (club: number, others: readonly number[]) => others.every((other) => group[other] !== group[club]);
  while (bag.length < size) {
    const open = all.filter((club) => !bag.includes(club) && fits(club, bag));
    bag.push(least(open, (club) => worth(ready, [...bag, club])));
  }
  let leave_m = worth(ready, bag);
  for (let better = true; better; ) {
    better = false;
    for (const out of bag.filter((club) => !locked.includes(club))) {
      const rest = bag.filter((club) => club !== out);
      const open = all.filter((club) => !bag.includes(club) && fits(club, rest));
      if (open.length === 0) continue;
      const club = least(open, (one) => worth(ready, [...rest, one]));
      const swapped = worth(ready, [...rest, club]);
      if (swapped >= leave_m - 1e-12) continue;
      bag = [...rest, club];
      leave_m = swapped;
      better = true;
      break;
    }
  }
  const others = all.filter((club) => !bag.includes(club));
  others.sort((a, b) => worth(ready, [a]) - worth(ready, [b]) || a - b);
  return { order: [...bag, ...others], leave_m };
}

/** D of a bag, m. */
function worth({ leave_m, weight }: ReadyCandidates, bag: readonly number[]): number {
  let sum = 0;
  for (let d = 0; d < weight.length; d++) {
    let nearest = Number.POSITIVE_INFINITY;
    for (const club of bag) if (leave_m[club][d] < nearest) nearest = leave_m[club][d];
    sum += weight[d] * nearest;
  }
  return sum;
}

function least(clubs: readonly number[], cost: (club: number) => number): number {
  let best = clubs[0];
  let bestCost = cost(best);
  for (const club of clubs.slice(1)) {
    const here = cost(club);
    if (here < bestCost) {
      best = club;
      bestCost = here;
    }
  }
  return best;
}
