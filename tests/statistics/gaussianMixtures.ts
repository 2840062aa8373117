import fc from 'fast-check';
import type { GaussianMixture } from '../../src/statistics/gaussianMixture.ts';

/** Mixtures of one to six components with means of 0 to 300 and deviations of 1 to 40; weights sum to 1. */
export const gaussianMixtures: fc.Arbitrary<GaussianMixture> = fc
  .array(
    fc.tuple(
      fc.double({ min: 0.01, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 300, noNaN: true }),
      fc.double({ min: 1, max: 40, noNaN: true }),
    ),
    { minLength: 1, maxLength: 6 },
  )
  .map((components) => {
    const total = components.reduce((sum, [weight]) => sum + weight, 0);
    return {
      weights: Float64Array.from(components, ([weight]) => weight / total),
      means: Float64Array.from(components, ([, mean]) => mean),
      deviations: Float64Array.from(components, ([, , deviation]) => deviation),
    };
  });
