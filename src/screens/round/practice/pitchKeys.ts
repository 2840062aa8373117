/** Steps from the target that have a key, in the unit on screen, from long to short. Own choice: finer near the target. */
const STEPS = [15, 10, 8, 6, 4, 2, 0, -2, -4, -6, -8, -10, -12, -15, -20] as const;

/** A ball shorter than this has only "that or less": where it pitched is not told apart. */
const WELL_SHORT = 25;

/** One key of the strip: so far long of the target (negative: short), or short by more than can be told. */
export type PitchKey =
  | { readonly kind: 'pitched'; readonly long: number }
  | { readonly kind: 'well short'; readonly by: number };

/** The keys of the strip beside a target, the longest first. Every step is a length in the unit on screen. */
export const pitchKeys: readonly PitchKey[] = [
  ...STEPS.map((long) => ({ kind: 'pitched', long }) as const),
  { kind: 'well short', by: WELL_SHORT },
];
