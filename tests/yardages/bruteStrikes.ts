import { type Cell, loftAboveAnchor, logSwingFraction } from '../../src/yardages/cell.ts';
import type { ShotEvidence } from '../../src/yardages/evidence.ts';
import { PRIOR } from '../../src/yardages/priorTable.ts';
import type { StrikeState } from '../../src/yardages/strikeMixture.ts';
import { integrate } from '../statistics/integrate.ts';

/** One kind of strike as the design states it: weight, shift of ln carry, variance, and the class its word is judged by. */
export interface StrikeNode {
  readonly weight: number;
  readonly shift: number;
  readonly variance: number;
  /** Variance that is the golfer's own scatter. */
  readonly own: number;
  readonly class: 'solid' | 'slight' | 'bad' | 'outlier';
}

const PARTIAL_SCATTER: Record<string, number> = { full: 1, '10:30': 1.2, '9:00': 1.4, '7:30': 1.6 };

/** The mixture of strikes of a cell written out node by node; `partials`: the club has partial swings. */
export function strikeNodes(cell: Cell, partials: boolean, variance: number, state: StrikeState): StrikeNode[] {
  const own = state.scatter2 * PARTIAL_SCATTER[cell.swing] ** 2;
  const base = variance + state.widening;
  const mishit = Math.min(0.6, state.mishits * Math.max(0.3, 1 - 0.01 * loftAboveAnchor(cell)));
  const solid = (1 - PRIOR.outlier) * (1 - mishit);
  const nodes: StrikeNode[] = [];
  const add = (weight: number, shift: number, ownPart: number, extra: number, kind: StrikeNode['class']) =>
    nodes.push({ weight, shift, variance: ownPart + base + extra, own: ownPart, class: kind });
  const g = logSwingFraction(cell.swing);
  const rungs = [0.55, 0.73, 0.87, 1].map(Math.log);
  const neighbours = partials
    ? [Math.min(...rungs.filter((r) => r > g + 0.01)), Math.max(...rungs.filter((r) => r < g - 0.01))].filter(
        Number.isFinite,
      )
    : [];
  const eased = cell.swing === 'full' ? PRIOR.eased : 0;
  const mixUps = neighbours.length > 0 ? PRIOR.mixUp : 0;
  add(solid * (1 - state.loose - eased - mixUps), 0, own, 0, 'solid');
  add(solid * state.loose, 0, 4 * own, 0, 'solid');
  if (eased > 0) add(solid * eased, Math.log(0.945), own, 0, 'solid');
  for (const other of neighbours) add((solid * mixUps) / neighbours.length, other - g, own, 0, 'solid');
  PRIOR.shortfall.forEach((share, s) => {
    const weight = (1 - PRIOR.outlier) * mishit * PRIOR.shortfallWeight[s];
    add(weight, Math.log(1 - share), own, PRIOR.mishitScatter ** 2, share < 0.12 ? 'slight' : 'bad');
  });
  add(PRIOR.outlier, 0, own, PRIOR.outlierScatter ** 2, 'outlier');
  return nodes;
}

/** Likelihood of each node: density at a measured carry, Simpson's integral over a censored one. */
export function nodeLikelihoods(shot: ShotEvidence, fitted: number, nodes: readonly StrikeNode[], state: StrikeState) {
  return nodes.map((node) => {
    const called = state.calledMishit[['solid', 'slight', 'bad', 'outlier'].indexOf(node.class)];
    const word = shot.word === 'none' ? 1 : shot.word === 'mishit' ? called : 1 - called;
    const sd = Math.sqrt(node.variance);
    const density = (y: number) =>
      Math.exp(-0.5 * ((y - fitted - node.shift) / sd) ** 2) / (sd * Math.sqrt(2 * Math.PI));
    if (shot.logLeast === shot.logMost) return node.weight * word * density(shot.logLeast);
    const centre = fitted + node.shift;
    const from = Math.max(shot.logLeast, centre - 9 * sd);
    const to = Math.min(shot.logMost, centre + 9 * sd);
    return from < to ? node.weight * word * integrate(density, from, to) : 0;
  });
}

/** ln likelihood of one shot. */
export function logLikelihood(
  shot: ShotEvidence,
  cell: Cell,
  partials: boolean,
  fitted: number,
  state: StrikeState,
): number {
  const likelihoods = nodeLikelihoods(shot, fitted, strikeNodes(cell, partials, shot.variance, state), state);
  return Math.log(likelihoods.reduce((sum, l) => sum + l, 0));
}
