import type { Measure, Strike } from '../src/golf/shot.ts';
import type { Choice } from './choosing.ts';
import type { CourseHole } from './courses.ts';
import { centimetres, fromYards, type ShotRecord, wholeYards } from './records.ts';
import type { SeededNumbers } from './seededNumbers.ts';
import type { Struck } from './swing.ts';

type MeasureRecord = { m: number; by: Measure['by']; error_m: number | null };

/** The slots of a shot that say how far it went. */
export type Measured = Pick<
  ShotRecord,
  'flag_m' | 'carry' | 'carryAtLeast_m' | 'carryAtMost_m' | 'total' | 'offline_m'
>;

export interface Seen {
  readonly choice: Choice;
  readonly struck: Struck;
  readonly hole: CourseHole;
  readonly teeToGreen_m: number;
  readonly lie: string;
  readonly toFlag_m: number;
  readonly devices: boolean;
  /** False for a ball that was never found: nothing could be measured. */
  readonly found: boolean;
}

const nothing: Measured = {
  flag_m: null,
  carry: null,
  carryAtLeast_m: null,
  carryAtMost_m: null,
  total: null,
  offline_m: null,
};

/** SD of a laser reading to the flag. Common practice, no source. */
const LASER_m = fromYards(0.7);
/** √2 ÷ 2.448: from the 95 % radius of one fix to the SD of a length between two. Rayleigh quantile. */
const SD_OF_RADIUS = Math.SQRT2 / 2.448;

/** Distance between two satellite fixes of so many metres accuracy, with its error written down. */
export function byFixes(true_m: number, numbers: SeededNumbers): MeasureRecord {
  const error_m = SD_OF_RADIUS * numbers.between(3.5, 7);
  return {
    m: centimetres(Math.max(1, true_m + error_m * numbers.normal())),
    by: 'gnss',
    error_m: centimetres(error_m),
  };
}

function judged(true_m: number, numbers: SeededNumbers): MeasureRecord {
  const guess_yd = (true_m + fromYards(5) * numbers.normal()) / fromYards(1);
  return { m: wholeYards(fromYards(Math.max(5, 5 * Math.round(guess_yd / 5)))), by: 'judged', error_m: null };
}

function paced(true_m: number, numbers: SeededNumbers): MeasureRecord {
  return { m: wholeYards(true_m * (1 + 0.025 * numbers.normal())), by: 'paced', error_m: null };
}

/** The flag by laser, then how far beside it the ball pitched, judged at the green in whole yards. */
export function besideFlag(
  toFlag_m: number,
  carry_m: number,
  numbers: SeededNumbers,
): { flag_m: number; carry: MeasureRecord } {
  const flag_m = wholeYards(toFlag_m + LASER_m * numbers.normal());
  const long = carry_m - toFlag_m;
  const judgedLong = wholeYards(long + (0.15 * Math.abs(long) + fromYards(0.5)) * numbers.normal());
  return { flag_m, carry: { m: centimetres(Math.max(1, flag_m + judgedLong)), by: 'laser', error_m: null } };
}

/** What trouble beside the landing says of a tee shot that nobody measured: cleared it, or short of it. */
function againstTrouble(seen: Seen): Measured | null {
  const { carry_m } = seen.struck;
  for (const trouble of seen.hole.trouble) {
    if (trouble.kind === 'out of bounds') continue;
    const far = wholeYards(seen.teeToGreen_m - trouble.ends_m);
    if (Math.abs(carry_m - far) > fromYards(45)) continue;
    return carry_m >= far ? { ...nothing, carryAtLeast_m: far } : { ...nothing, carryAtMost_m: far };
  }
  return null;
}

function fromTheTee(seen: Seen, numbers: SeededNumbers): Measured {
  const { carry_m, roll_m } = seen.struck;
  const offline_m = numbers.chance(0.55) ? wholeYards(seen.struck.offline_m) : null;
  const censored = numbers.chance(0.5) ? againstTrouble(seen) : null;
  if (censored) return { ...censored, offline_m };
  const way = numbers.uniform();
  if (!seen.devices) {
    return way < 0.5 ? { ...nothing, carry: judged(carry_m, numbers), offline_m } : nothing;
  }
  if (way < 0.6) return { ...nothing, total: byFixes(Math.max(1, carry_m + roll_m), numbers), offline_m };
  if (way < 0.72) return { ...nothing, carry: byFixes(carry_m, numbers), offline_m };
  if (way < 0.82) return { ...nothing, carry: judged(carry_m, numbers), offline_m };
  return nothing;
}

/** How the golfer came to know the distance of a shot, if at all. */
export function measure(seen: Seen, numbers: SeededNumbers): Measured {
  const { choice, struck, toFlag_m } = seen;
  if (!seen.found) return nothing;
  if (choice.intent === 'chip') {
    return numbers.chance(0.3) ? { ...nothing, flag_m: wholeYards(toFlag_m) } : nothing;
  }
  if (seen.lie === 'tee' && seen.hole.par > 3) return fromTheTee(seen, numbers);
  const offline_m = numbers.chance(0.75) ? wholeYards(struck.offline_m) : null;
  const far = Math.abs(struck.carry_m - toFlag_m) > fromYards(25);
  const way = numbers.uniform();
  if (!seen.devices) {
    if (way < 0.35) return { ...nothing, carry: paced(struck.carry_m, numbers), offline_m };
    return way < 0.75 ? { ...nothing, carry: judged(struck.carry_m, numbers), offline_m } : nothing;
  }
  const flag_m = choice.atFlag ? wholeYards(toFlag_m + LASER_m * numbers.normal()) : null;
  if (choice.atFlag && !far && way < 0.72) {
    return { ...nothing, ...besideFlag(toFlag_m, struck.carry_m, numbers), offline_m };
  }
  if (way < 0.82) return { ...nothing, flag_m, carry: byFixes(struck.carry_m, numbers), offline_m };
  if (way < 0.86) {
    const typed = wholeYards(struck.carry_m + fromYards(2.5) * numbers.normal());
    return { ...nothing, flag_m, carry: { m: typed, by: 'typed', error_m: null }, offline_m };
  }
  if (way < 0.92) return { ...nothing, flag_m, carry: judged(struck.carry_m, numbers), offline_m };
  return { ...nothing, flag_m };
}

/** What the golfer writes down as the strike: often right, sometimes wrong, sometimes nothing. */
export function strikeLabel(strike: Strike, numbers: SeededNumbers): Strike | null {
  const way = numbers.uniform();
  if (strike === 'solid') {
    if (way < 0.78) return 'solid';
    return way < 0.82 ? numbers.pick(['thin', 'heel', 'toe']) : null;
  }
  if (way < 0.66) return strike;
  return way < 0.76 ? 'solid' : null;
}
