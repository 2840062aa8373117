import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cellTraits, packEvidence, type ShotEvidence } from '../../src/yardages/evidence.ts';
import { PRIOR } from '../../src/yardages/priorTable.ts';
import { type StrikeState, SUM, strikeReader, WORD_CLASSES } from '../../src/yardages/strikeMixture.ts';
import { logLikelihood, nodeLikelihoods, strikeNodes } from './bruteStrikes.ts';
import { evidenceOf, smallBag } from './cells.ts';

const STATE: StrikeState = {
  mishits: 0.22,
  scatter2: 0.045 ** 2,
  widening: 0,
  calledMishit: PRIOR.calledMishit,
  loose: 0.07,
};
const IRON = 3;
const WEDGE = 5;
const NINE = 7;
const THETA = Math.log(120);
const hasPartials = (cell: number) => smallBag[cell].club === 5;

function read(shot: ShotEvidence, fitted: number, state: StrikeState = STATE): Float64Array {
  const reader = strikeReader(packEvidence([shot]), cellTraits(smallBag));
  reader.read(0, fitted, state, true);
  return reader.sums.slice();
}

const likelihood = (shot: ShotEvidence, fitted: number, state: StrikeState = STATE) =>
  logLikelihood(shot, smallBag[shot.cell], hasPartials(shot.cell), fitted, state);

/** Shots of every sort: near, short, far off; labelled or not; full and partial; measured and censored. */
const shots: [name: string, shot: ShotEvidence][] = [
  ['on the number', evidenceOf(IRON, THETA + 0.01)],
  ['said solid', evidenceOf(IRON, THETA - 0.06, { word: 'solid' })],
  ['said mishit', evidenceOf(IRON, THETA - 0.06, { word: 'mishit' })],
  ['well short', evidenceOf(IRON, THETA - 0.22)],
  ['far too long', evidenceOf(IRON, THETA + 0.3)],
  ['driver', evidenceOf(0, THETA - 0.1, { word: 'mishit' })],
  ['full wedge', evidenceOf(WEDGE, THETA - 0.1)],
  ['9:00 that was a 10:30', evidenceOf(NINE, THETA + 0.17)],
  ['cleared', evidenceOf(IRON, 0, { logLeast: THETA + 0.02, logMost: Number.POSITIVE_INFINITY })],
  ['short of', evidenceOf(IRON, 0, { logLeast: Number.NEGATIVE_INFINITY, logMost: THETA - 0.05, word: 'solid' })],
  ['between', evidenceOf(NINE, 0, { logLeast: THETA - 0.08, logMost: THETA + 0.03, word: 'mishit' })],
];

describe.each(shots)('%s', (_, shot) => {
  const sums = read(shot, THETA);
  const nodes = strikeNodes(smallBag[shot.cell], hasPartials(shot.cell), shot.variance, STATE);
  const likelihoods = nodeLikelihoods(shot, THETA, nodes, STATE);
  const total = likelihoods.reduce((sum, l) => sum + l, 0);
  const share = (is: (node: (typeof nodes)[number]) => boolean) =>
    likelihoods.reduce((sum, l, j) => sum + (is(nodes[j]) ? l / total : 0), 0);

  test('responsibilities are those of Bayes over the nodes written out', () => {
    expect(sums[SUM.solid]).toBeCloseTo(
      share((node) => node.class === 'solid'),
      9,
    );
    expect(sums[SUM.mishit]).toBeCloseTo(
      share((node) => node.class === 'slight' || node.class === 'bad'),
      9,
    );
    expect(sums[SUM.outlier]).toBeCloseTo(
      share((node) => node.class === 'outlier'),
      9,
    );
    expect(sums[SUM.loose]).toBeCloseTo(likelihoods[1] / total, 9);
    WORD_CLASSES.forEach((name, c) => {
      expect(sums[SUM.wordClass + c]).toBeCloseTo(
        share((node) => node.class === name),
        9,
      );
    });
    expect(sums[SUM.information]).toBeCloseTo(
      nodes.reduce((sum, node, j) => sum + likelihoods[j] / total / node.variance, 0),
      5,
    );
  });

  // Differences of the brute likelihood: h is small against the narrowest node (SD .05) and large against rounding.
  const h = 1e-3;
  const at = (d: number, state: StrikeState = STATE) => likelihood(shot, THETA + d, state);

  test('the pull is the slope of the log likelihood, the observed information its curvature', () => {
    const slope = (at(h) - at(-h)) / (2 * h);
    const curvature = -(at(h) - 2 * at(0) + at(-h)) / (h * h);
    expect(Math.abs(sums[SUM.pull] - slope)).toBeLessThan(1e-3 * (1 + Math.abs(slope)));
    expect(Math.abs(sums[SUM.information] - sums[SUM.missing] - curvature)).toBeLessThan(0.5);
  });

  test('couplings with the share of mishits and the scatter are mixed second derivatives', () => {
    const logit = (d: number): StrikeState => {
      const odds = (STATE.mishits / (1 - STATE.mishits)) * Math.exp(d);
      return { ...STATE, mishits: odds / (1 + odds) };
    };
    const scatter = (d: number): StrikeState => ({ ...STATE, scatter2: STATE.scatter2 * Math.exp(d) });
    const mixed = (move: (d: number) => StrikeState) =>
      (at(h, move(h)) - at(-h, move(h)) - at(h, move(-h)) + at(-h, move(-h))) / (4 * h * h);
    const withMishits = mixed(logit);
    const withScatter = mixed(scatter);
    expect(Math.abs(sums[SUM.pullMishits] - withMishits)).toBeLessThan(2e-3 * (1 + Math.abs(withMishits)));
    // Of a censored shot the model takes the spread within a node at its mean: no third moment, so no check.
    if (shot.logLeast !== shot.logMost) return;
    const read = sums[SUM.pullScatter] - sums[SUM.pullScatterInformation];
    expect(Math.abs(read - withScatter)).toBeLessThan(2e-3 * (1 + Math.abs(withScatter)));
  });

  test('what is missing on mishits and scatter is the variance of their scores', () => {
    const p = Math.min(0.6, STATE.mishits * Math.max(0.3, 1 - 0.01 * (smallBag[shot.cell].loft_deg - 34)));
    const score = (name: string) =>
      name === 'outlier' ? 0 : name === 'solid' ? (-p / (1 - p)) * (1 - STATE.mishits) : 1 - STATE.mishits;
    const mean = nodes.reduce((sum, node, j) => sum + (likelihoods[j] / total) * score(node.class), 0);
    const square = nodes.reduce((sum, node, j) => sum + (likelihoods[j] / total) * score(node.class) ** 2, 0);
    expect(sums[SUM.mishitsMissing]).toBeCloseTo(square - mean * mean, 9);
    if (shot.logLeast !== shot.logMost) return;
    const u = nodes.map(
      (node) => (0.5 * node.own * ((shot.logLeast - THETA - node.shift) ** 2 / node.variance - 1)) / node.variance,
    );
    const meanU = u.reduce((sum, each, j) => sum + (likelihoods[j] / total) * each, 0);
    const squareU = u.reduce((sum, each, j) => sum + (likelihoods[j] / total) * each * each, 0);
    expect(sums[SUM.scatterMissing]).toBeCloseTo(squareU - meanU * meanU, 9);
  });
});

test('the evidence on the scatter is what the solid nodes expect of it', () => {
  const shot = evidenceOf(IRON, THETA + 0.05);
  const sums = read(shot, THETA);
  const nodes = strikeNodes(smallBag[IRON], false, shot.variance, STATE);
  const likelihoods = nodeLikelihoods(shot, THETA, nodes, STATE);
  const total = likelihoods.reduce((sum, l) => sum + l, 0);
  let expected = 0;
  nodes.forEach((node, j) => {
    if (node.class !== 'solid') return;
    const e = shot.logLeast - THETA - node.shift;
    // E[scatter² | e]: mean own/v · e, variance own (1 − own/v); over the node's variance factor.
    const second = ((node.own / node.variance) * e) ** 2 + node.own * (1 - node.own / node.variance);
    expected += ((likelihoods[j] / total) * second * STATE.scatter2) / node.own;
  });
  expect(sums[SUM.scatter]).toBeCloseTo(expected, 12);
});

test('a bound far beyond every node still pulls, as the tail of the widest one does', () => {
  const shot = evidenceOf(IRON, 0, { logLeast: THETA + 4, logMost: Number.POSITIVE_INFINITY });
  const outlier = strikeNodes(smallBag[IRON], false, shot.variance, STATE).find((node) => node.class === 'outlier');
  const sd = Math.sqrt(outlier?.variance ?? 0);
  const sums = read(shot, THETA);
  expect(sums[SUM.outlier]).toBeCloseTo(1, 9);
  // Mills' ratio: the mean of a normal tail beyond a is a + 1/a − 2/a³ + … deviations.
  const a = 4 / sd;
  expect((sums[SUM.pull] * sd) / (a + 1 / a - 2 / a ** 3)).toBeCloseTo(1, 4);
});

test('nothing a logbook can hold makes a figure that is none', () => {
  const wild = fc.double({ min: -60, max: 60, noNaN: true });
  const bound = fc.oneof(wild, fc.constant(Number.NEGATIVE_INFINITY), fc.constant(Number.POSITIVE_INFINITY));
  fc.assert(
    fc.property(
      fc.nat({ max: smallBag.length - 1 }),
      bound,
      bound,
      fc.double({ min: 1e-9, max: 1e5, noNaN: true }),
      fc.constantFrom('none' as const, 'solid' as const, 'mishit' as const),
      fc.double({ min: 1e-6, max: 0.999, noNaN: true }),
      fc.double({ min: 1e-6, max: 1, noNaN: true }),
      (cell, one, other, variance, word, mishits, scatter2) => {
        const [logLeast, logMost] = [Math.min(one, other), Math.max(one, other)];
        fc.pre(!(logLeast === logMost && !Number.isFinite(logLeast)));
        fc.pre(Number.isFinite(logLeast) || Number.isFinite(logMost));
        const sums = read({ cell, day: 0, logLeast, logMost, variance, word, shared: [] }, THETA, {
          ...STATE,
          mishits,
          scatter2,
        });
        expect(sums.every(Number.isFinite)).toBe(true);
        expect(sums[SUM.information]).toBeGreaterThanOrEqual(0);
        expect(sums[SUM.missing]).toBeGreaterThanOrEqual(-1e-6 * (1 + sums[SUM.information]));
      },
    ),
  );
});

test('evidence that says nothing is refused', () => {
  const open = { logLeast: Number.NEGATIVE_INFINITY, logMost: Number.POSITIVE_INFINITY };
  expect(() => packEvidence([evidenceOf(0, 0, open)])).toThrow(RangeError);
  expect(() => packEvidence([evidenceOf(0, 0, { logLeast: 5, logMost: 4 })])).toThrow(/ln carry 5 to 4/);
  expect(() => packEvidence([evidenceOf(0, 5, { variance: 0 })])).toThrow(RangeError);
});
