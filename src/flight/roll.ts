import type { Ground } from '../golf/conditions.ts';
import { type Degrees, degrees } from '../units/degrees.ts';
import { type Metres, metres } from '../units/metres.ts';
import { STANDARD_DENSITY } from './air.ts';
import { bounceAndRun } from './bounceAndRun.ts';
import { type FlownKind, launchOf } from './flownClub.ts';
import { fly, still } from './trajectory.ts';

/** How far a ball runs on from its pitch mark (negative: comes back), and the standard deviation about that. */
export interface Roll {
  readonly roll_m: Metres;
  readonly sd_m: Metres;
}

/** The carry behind a total, and its standard deviation. */
export interface CarryBehindTotal {
  readonly carry_m: Metres;
  readonly sd_m: Metres;
}

/** Roll against carry for one club on one ground: both grow from node to node, and so does their sum. */
export interface RollTable {
  readonly carry_m: Float64Array;
  readonly total_m: Float64Array;
}

/** Spread of a roll about its expectation: a share of it, and a floor of 2 yd, m. Own estimate. */
const ROLL_SPREAD_SHARE = 0.4;
const ROLL_SPREAD_FLOOR_M = 1.8288;
/**
 * Most that a ball runs on, as a share of its carry. Common practice, no source: the flight of a slow
 * swing lands flat here, and bounce and run alone would let it run on for half its carry.
 */
const MOST_ROLL_SHARE: Readonly<Record<Ground, number>> = { soft: 0.09, normal: 0.14, firm: 0.2 };
/** Ball speeds of the nodes, m/s. */
const NODE_STEP = 2.5;
const NODES = 44;
/** A longer carry makes a longer total by at least this share of the difference. */
const LEAST_TOTAL_GAIN = 0.2;
/** Tables kept; beyond it the oldest goes. A bag has 14 clubs, a ground 3 kinds. */
const TABLES_KEPT = 600;

const kept = new Map<string, RollTable>();

function spread(roll: number): Metres {
  return metres(Math.hypot(ROLL_SPREAD_SHARE * roll, ROLL_SPREAD_FLOOR_M));
}

function computeTable(kind: FlownKind, loft_deg: Degrees, ground: Ground): RollTable {
  const launchAt = launchOf({ kind, loft_deg, height: null });
  const carries = [0];
  const totals = [0];
  for (let n = 1; n <= NODES; n++) {
    const flight = fly(launchAt(n * NODE_STEP), still(STANDARD_DENSITY));
    const last = carries[carries.length - 1];
    // Past the speed where more of it carries no further the club is out of its range.
    if (flight.kind !== 'landed' || flight.carry_m < last + 0.05) {
      if (n > 8) break;
      continue;
    }
    const most = MOST_ROLL_SHARE[ground] * flight.carry_m;
    const total = flight.carry_m + Math.min(bounceAndRun(flight, ground), most);
    totals.push(Math.max(total, totals[totals.length - 1] + LEAST_TOTAL_GAIN * (flight.carry_m - last)));
    carries.push(flight.carry_m);
  }
  return { carry_m: Float64Array.from(carries), total_m: Float64Array.from(totals) };
}

/**
 * Roll against carry for a club on a ground, worked out once and kept.
 *
 * @param loft_deg 0 to 90°; taken to the nearest quarter degree.
 * @returns nodes of carry and total in standard conditions on level ground, both strictly growing from 0.
 * @throws RangeError when the loft is outside 0 to 90°.
 * Source: launch of flownClub.ts, trajectory.ts, bounceAndRun.ts.
 */
export function rollTable(kind: FlownKind, loft_deg: Degrees, ground: Ground): RollTable {
  const loft = degrees(Math.round(loft_deg * 4) / 4);
  const key = `${kind}|${loft}|${ground}`;
  const found = kept.get(key);
  if (found) return found;
  const table = computeTable(kind, loft, ground);
  if (kept.size >= TABLES_KEPT) {
    for (const oldest of kept.keys()) {
      kept.delete(oldest);
      break;
    }
  }
  kept.set(key, table);
  return table;
}

/** Reads `to` at a value of `from`, straight between nodes; past the last node the two grow alike. */
function read(from: Float64Array, to: Float64Array, value: number): number {
  const end = from.length - 1;
  if (value >= from[end]) return to[end] + (value - from[end]);
  let low = 0;
  let high = end;
  while (high - low > 1) {
    const mid = (low + high) >> 1;
    if (from[mid] <= value) low = mid;
    else high = mid;
  }
  return to[low] + ((to[high] - to[low]) * (value - from[low])) / (from[high] - from[low]);
}

/**
 * How far this club's ball runs on after a carry, and how uncertain that is.
 *
 * Standard conditions, level ground, usual launch for the loft. SD √((40 % of the roll)² + (2 yd)²).
 *
 * @param carry_m 0 or more; a partial swing is the same club with its shorter carry.
 * @throws RangeError when the carry is negative or not finite, or the loft outside 0 to 90°.
 * Source: bounceAndRun.ts (Penner 2002/2003 in form, values from memory); spread our own estimate.
 */
export function expectedRoll(kind: FlownKind, loft_deg: Degrees, carry_m: Metres, ground: Ground): Roll {
  if (!(carry_m >= 0)) throw new RangeError(`carry ${carry_m} m: 0 or more is needed`);
  const table = rollTable(kind, loft_deg, ground);
  const roll = read(table.carry_m, table.total_m, carry_m) - carry_m;
  return { roll_m: metres(roll), sd_m: spread(roll) };
}

/**
 * The carry behind a total: solves carry + roll(carry) = total, which has one answer since totals grow with carries.
 *
 * @param total_m 0 or more.
 * @returns the carry and its SD, √((40 % of the roll)² + (2 yd)²).
 * @throws RangeError when the total is negative or not finite, or the loft outside 0 to 90°.
 * Source: as expectedRoll.
 */
export function carryFromTotal(kind: FlownKind, loft_deg: Degrees, total_m: Metres, ground: Ground): CarryBehindTotal {
  if (!(total_m >= 0)) throw new RangeError(`total ${total_m} m: 0 or more is needed`);
  const table = rollTable(kind, loft_deg, ground);
  const carry = read(table.total_m, table.carry_m, total_m);
  return { carry_m: metres(carry), sd_m: spread(total_m - carry) };
}
