import * as z from 'zod/mini';

/** Where a ball can be played from. */
export const lies = [
  'tee',
  'fairway',
  'light rough',
  'heavy rough',
  'fairway bunker',
  'greenside bunker',
  'bare',
  'other',
] as const;

export const lieField = z.enum(lies);
/** Where the ball was played from. */
export type Lie = z.infer<typeof lieField>;

export const restLieField = z.enum([...lies, 'green', 'holed']);
/** Where the ball came to rest: a lie, the green, or the hole. */
export type RestLie = z.infer<typeof restLieField>;
