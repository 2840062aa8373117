/**
 * Every constant of the carry model, in one place.
 *
 * None of them is measured on real golfers. They were tuned by simulation on synthetic golfers and
 * stand here by name, ready to be re-estimated when there are enough real books. Unless said
 * otherwise a figure is a standard deviation of the natural logarithm of a carry: .03 is 3 %.
 */
export const PRIOR = {
  /** Loft at which the curve of the carries is anchored, degrees. */
  anchorLoft_deg: 34,
  /** Stock carry of a golfer of whom nothing is known with that loft, metres (135 yd). */
  anchorCarry_m: 123.444,
  /** How ln carry falls with a degree of loft, and how the fall steepens. */
  slopePerDegree: -0.0175,
  bendPerDegree2: -0.0004,

  /** How much golfers differ: all clubs together, the slope over loft, its bend. */
  level: 0.3,
  slope: 0.004,
  bend: 0.00018,
  /** What a kind of club adds to ln carry at the same loft, and how much golfers differ in that. */
  kindOffset: { driver: 0.14, 'fairway wood': 0.07, hybrid: 0.02, 'driving iron': 0, iron: 0, wedge: 0, putter: 0 },
  kind: { driver: 0.04, 'fairway wood': 0.028, hybrid: 0.022, 'driving iron': 0, iron: 0, wedge: 0.022, putter: 0 },
  /** One club against the golfer's own curve, whatever the swing. */
  club: 0.022,
  /** One spec period of a club against the club: a new shaft or head changes more than the loft says. */
  period: 0.012,
  /** One partial swing with one club against what the swing length says; a full swing's own remainder. */
  partialCell: 0.03,
  fullCell: 0.004,
  /** Clock hours of the lead arm, the usual share of the full carry, and how much golfers differ in it. */
  swingHours: [7.5, 9, 10.5],
  swingFraction: [0.55, 0.73, 0.87],
  swing: [0.06, 0.045, 0.025],
  /** One softness for all partial swings: multiplies ln fraction. */
  softness: 0.13,

  /** What a lie takes off ln carry, the scatter it adds, and how much golfers differ in it. */
  lieOffset: { light: -0.045, heavy: -0.09, sand: -0.09, bare: -0.02, driverOffTurf: -0.05 },
  lieScatter: { light: 0.045, heavy: 0.05, sand: 0.05, bare: 0.04, other: 0.05, unknown: 0.03, driverOffTurf: 0.05 },
  rough: 0.025,
  sand: 0.02,
  /** A ball that comes out of the grass without spin flies further; a wet one is less certain. */
  flierOffset: 0.06,
  flierScatter: 0.06,
  wetScatter: 0.02,
  stanceScatter: 0.02,

  /** Drift of a golfer over time: a walk with knots at these ages in days; scale over 210 days. */
  driftKnots_days: [0, 30, 90, 210, 420, 840],
  driftPer210Days: 0.022,
  /** What all shots of one day share. */
  day: 0.008,
  /** Carries on the practice ground against the course: own balls, and range balls. */
  practiceOwnOffset: 0,
  practiceOwn: 0.02,
  rangeBallOffset: -0.03,
  rangeBall: 0.035,
  /** How far a golfer's response to wind and to air may differ from the flight model's (1 = as computed). */
  windResponse: 0.45,
  /** How much that to wind may go up or down with loft over 22°, from the middle iron to driver or lob wedge. */
  windByLoft: 0.4,
  windLoftSpan_deg: 22,
  airResponse: 0.45,

  /** Scatter of every logged shot beside the golfer's own: uneven ground, unnoticed wind. */
  course: 0.027,
  /** The same for a forecast from a known lie. */
  forecast: 0.02,

  /** Scatter of a solid strike at a full swing: prior guess and how many shots it is worth. */
  scatter: 0.048,
  scatterShots: 8,
  /** Scatter of a partial swing against a full one, at the hours of `swingHours`. */
  partialScatter: [1.6, 1.4, 1.2],
  /** Share of mishits: a Beta(4, 16) before any shot; more for long clubs, per degree below 34. */
  mishits: 4,
  solids: 16,
  mishitPerDegree: 0.01,
  /** Mishits fall short by these shares of the carry, this often; scatter round each. */
  shortfall: [0.07, 0.13, 0.21, 0.33],
  shortfallWeight: [0.34, 0.32, 0.23, 0.11],
  mishitScatter: 0.025,
  /** Solid strikes that were loose (twice the scatter), or full swings eased by 5.5 %. */
  loose: 0.06,
  looseShots: 20,
  looseFactor: 2,
  eased: 0.05,
  easedBy: 0.055,
  /** Logged with the neighbouring swing length. */
  mixUp: 0.02,
  /** Anything else: a wrong club, a slip of the thumb. */
  outlier: 0.015,
  outlierScatter: 0.25,
  /**
   * How often a strike is called a mishit when it is solid, a slight mishit, a bad one, an outlier:
   * a first guess, and how many labelled strikes of that class the guess is worth.
   */
  calledMishit: [0.08, 0.55, 0.88, 0.3],
  calledMishitShots: [25, 15, 15, 15],
  /** A shortfall from which a mishit counts as bad. */
  badFrom: 0.12,

  /** A golfer's own claimed number. */
  claim: 0.08,
  /** Mishits that never get logged, against those that do, where no score says. */
  unloggedMishits: 0.25,
} as const;
