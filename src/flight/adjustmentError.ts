/** How wrong an adjustment may be, as a share of its size, by club and cause. */
export type Cause = 'headwind' | 'tailwind' | 'air' | 'up' | 'down';

/** Lofts of the columns below: driver, 7 iron, pitching wedge, sand wedge. */
const LOFTS = [10.5, 34, 46, 56] as const;

/**
 * One standard deviation of an adjustment over its size. Own estimates from flying many balls with other
 * coefficients, launch angles and spins than ours; none is measured on real golfers.
 */
const SHARES: Readonly<Record<Cause, readonly [number, number, number, number]>> = {
  headwind: [0.45, 0.45, 0.4, 0.35],
  tailwind: [0.75, 0.7, 0.5, 0.45],
  air: [0.9, 0.45, 0.25, 0.25],
  up: [0.4, 0.3, 0.2, 0.2],
  down: [0.2, 0.2, 0.15, 0.1],
};

/**
 * One standard deviation of an adjustment, as a share of the adjustment, for a club.
 *
 * @param loft_deg straight between the columns, held beyond the driver's and the sand wedge's.
 */
export function errorShare(cause: Cause, loft_deg: number): number {
  const row = SHARES[cause];
  if (loft_deg <= LOFTS[0]) return row[0];
  for (let i = 1; i < LOFTS.length; i++) {
    if (loft_deg <= LOFTS[i]) {
      return row[i - 1] + ((row[i] - row[i - 1]) * (loft_deg - LOFTS[i - 1])) / (LOFTS[i] - LOFTS[i - 1]);
    }
  }
  return row[LOFTS.length - 1];
}
