import type { Metres } from '../units/metres.ts';

/** How lengths are said to this golfer. */
export interface SpokenLength {
  /** The unit as it reads in a heading: `yards`. */
  readonly unit: string;
  /** A length in that unit. */
  of(length: Metres): number;
}
