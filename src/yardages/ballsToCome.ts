import { type Cell, loftAboveAnchor, scatterFactor } from './cell.ts';
import { PRIOR } from './priorTable.ts';
import { mishitShare } from './strikeMixture.ts';

/** Standard error of a carry measured with care (laser to the flag, pitch judged near it), m. As in carryError.ts. */
const CAREFUL_ERROR = 2;

/**
 * What one more ball with a cell will tell of it: information on θ = ln(stock carry in m), 1/(SD of ln carry)².
 *
 * A solid strike tells 1/(σ²M² + course² + (2 m / carry)²); of a mishit nothing is learned of the stock
 * carry. Assumption: measured with care, from the reference lie.
 *
 * @param theta of the cell. @param scatter2 σ² of a solid full swing. @param mishits π at the anchor loft.
 */
export function ballInformation(cell: Cell, theta: number, scatter2: number, mishits: number): number {
  const own = scatter2 * scatterFactor(cell.swing) ** 2;
  const variance = own + PRIOR.course ** 2 + (CAREFUL_ERROR / Math.exp(theta)) ** 2;
  const factor = Math.max(0.3, 1 - PRIOR.mishitPerDegree * loftAboveAnchor(cell));
  return (1 - mishitShare(mishits, factor)) / variance;
}

/** How the balls of one cell will move and narrow every cell. */
export interface Narrowing {
  /** u: the means will move by u z, z standard normal; the covariance will lose u uᵀ. */
  readonly direction: Float64Array;
}

/**
 * What information on one cell does to all: Kalman's update, C' = C − u uᵀ with
 * u = C_·i √(ι / (1 + ι C_ii)). Before the balls are hit the means are expected where they are, with
 * the standard deviation |u_j| that the balls will move them by.
 *
 * @param covariance row-major. @param information ι, 0 or more. @throws RangeError when it is negative.
 * Source: Kalman (1960), J. Basic Engineering 82, 35–45.
 */
export function narrowing(covariance: Float64Array, n: number, cell: number, information: number): Narrowing {
  if (!(information >= 0)) throw new RangeError(`information ${information}: 0 or more is needed`);
  const scale = Math.sqrt(information / (1 + information * covariance[cell * n + cell]));
  return { direction: Float64Array.from({ length: n }, (_, j) => covariance[j * n + cell] * scale) };
}

/** The covariance after a {@link narrowing}: C − u uᵀ. */
export function narrowed(covariance: Float64Array, { direction }: Narrowing): Float64Array {
  const n = direction.length;
  return covariance.map((c, at) => c - direction[Math.floor(at / n)] * direction[at % n]);
}
