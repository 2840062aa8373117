/** Least and most of something that is drawn golfer by golfer. */
export type Span = readonly [number, number];

/**
 * What the golfers of one world have in common. Every value here and in the files beside it is
 * invented for the test, from common practice, no source; none is taken from the model's prior.
 */
export interface World {
  readonly name: string;
  /** How carry goes with loft: as usual, or long clubs bunched together or spread apart. */
  readonly curve: 'usual' | 'bunched or gappy';
  /** Degrees of freedom of a club's own deviation and of a solid strike; null: normal. */
  readonly tails: number | null;
  /** Whether strikes are labelled at all. */
  readonly labels: boolean;
  /** Partial swings as taught, or golfer by golfer and wedge by wedge. */
  readonly swings: 'as taught' | 'own';
  /** Share of mishits with a middling club (40°) from the fairway, golfer by golfer. */
  readonly mishits: Span;
  /** Clubs 10 to 15 yd off their loft, strong-lofted sets, bags put together out of two. */
  readonly oddClubs: boolean;
  /** How distances are come by: instruments and guesses, or guesses only. */
  readonly measures: 'usual' | 'guesses';
  /** Share of shots logged under a neighbouring club. */
  readonly wrongClub: Span;
  /** Logged shots of a club of average use, over the season. */
  readonly activity: Span;
  /** Most shots of a club at one swing. */
  readonly mostShots: number;
  /** Change of all carries over the season, as a fraction, either way. */
  readonly drift: Span;
  /** Days from the first round to the last. */
  readonly days: Span;
  /** How many rounds there are; null: as many as the shots fill. */
  readonly rounds: number | null;
}

export const base: World = {
  name: 'base',
  curve: 'usual',
  tails: null,
  labels: true,
  swings: 'as taught',
  mishits: [0.1, 0.3],
  oddClubs: false,
  measures: 'usual',
  wrongClub: [0.01, 0.02],
  activity: [2.5, 16],
  mostShots: 40,
  drift: [0, 0.05],
  days: [60, 200],
  rounds: null,
};

/** Every world the model is scored in; the first is the ordinary one. */
export const worlds: readonly World[] = [
  base,
  { ...base, name: 'other loft curve', curve: 'bunched or gappy' },
  { ...base, name: 'heavy tails', tails: 3 },
  { ...base, name: 'no strike labels', labels: false },
  { ...base, name: 'other swing fractions', swings: 'own' },
  { ...base, name: 'more mishits', mishits: [0.25, 0.4] },
  { ...base, name: 'odd clubs', oddClubs: true },
  { ...base, name: 'rough and ready', measures: 'guesses', wrongClub: [0.04, 0.04], activity: [1.5, 7] },
  { ...base, name: 'fast drift', drift: [0.05, 0.12] },
];
