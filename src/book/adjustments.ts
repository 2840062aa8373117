import { type FlightConditions, flightConditions } from '../flight/flightConditions.ts';
import type { FlownClub } from '../flight/flownClub.ts';
import { launchFor } from '../flight/launch.ts';
import { type Adjustment, type Standardiser, standardise, standardiser } from '../flight/standardise.ts';
import { FELT_HEIGHT, OPEN_GROUND, windShare } from '../flight/wind.ts';
import type { Degrees } from '../units/degrees.ts';
import { type Metres, metres } from '../units/metres.ts';
import { type MetresPerSecond, metresPerSecond } from '../units/metresPerSecond.ts';
import { type CountedShot, loftOf } from './countedShots.ts';

/**
 * Stock carries are rounded to steps of 2 % before a launch is solved for them: what weather does to a
 * carry hardly depends on its length, and equal steps let one answer serve many shots and many books.
 */
const CARRY_STEP_LOG = 0.02;
/** Answers kept at the most; beyond it all are dropped and worked out again. */
const MOST_KEPT = 60_000;

const launches = new Map<string, Standardiser | string>();
const answers = new Map<string, Adjustment>();

/** Whether anything but standard conditions is noted for a shot. */
export function hasConditions({ shot, round }: CountedShot): boolean {
  const { temperature_C, pressure_hPa, altitude_m, humidity_pct, wind_mps } = round.conditions;
  const noted = [temperature_C, pressure_hPa, altitude_m, humidity_pct, wind_mps, shot.rise_m, shot.wind];
  return noted.some((value) => value !== null);
}

/** How hard it blew in a round as noted shot by shot, at the height a golfer feels it. */
export interface UsualWind {
  readonly mps: MetresPerSecond;
  readonly reference_m: Metres;
}

/**
 * The wind of every round that notes none itself but has it on some of its shots: the mean strength of
 * those. A shot on which nobody noted it did not fly through still air; it flew through that, from
 * somewhere.
 */
export function usualWinds(counted: readonly CountedShot[]): ReadonlyMap<string, UsualWind> {
  const noted = new Map<string, number[]>();
  for (const { shot, round } of counted) {
    if (round.conditions.wind_mps !== null || shot.wind === null) continue;
    const felt = shot.wind === 'calm' ? 0 : shot.wind.mps * windShare(FELT_HEIGHT, shot.wind.reference_m, OPEN_GROUND);
    const list = noted.get(round.id);
    if (list) list.push(felt);
    else noted.set(round.id, [felt]);
  }
  return new Map(
    [...noted].map(([id, felt]) => {
      const mean = felt.reduce((sum, mps) => sum + mps, 0) / felt.length;
      return [id, { mps: metresPerSecond(mean), reference_m: FELT_HEIGHT }];
    }),
  );
}

/**
 * What air, wind and slope did to a shot, given the stock carry of its cell. Kept, so that the same
 * question in a later book costs nothing; the answer never depends on what was asked before.
 *
 * @param stock_m stock carry of the cell, m. @param bearing_deg of the hole, or null.
 * @param usual the round's wind where only its shots note it ({@link usualWinds}), or null.
 */
export function adjustmentOf(
  counted: CountedShot,
  stock_m: number,
  bearing_deg: Degrees | null,
  usual: UsualWind | null,
): Adjustment {
  const { shot, round, club } = counted;
  if (club.kind === 'putter') throw new RangeError(`club ${club.id} is a putter: it has no carry`);
  const noted =
    usual && shot.wind === null
      ? { ...round.conditions, wind_mps: usual.mps, windReference_m: usual.reference_m, windFrom_deg: null }
      : round.conditions;
  const conditions = flightConditions(noted, shot.wind, bearing_deg);
  if (conditions.kind === 'refused') return { kind: 'not adjustable', why: conditions.why };
  const flown = { kind: club.kind, loft_deg: loftOf(counted), height: club.launch };
  return effectOf(flown, stock_m, conditions, shot.rise_m ?? 0);
}

/**
 * What conditions and a rise do to the stock shot of a club, kept like {@link adjustmentOf}.
 *
 * @param stock_m stock carry in standard conditions, m, above 0. @param rise_m of the landing point above the ball.
 */
export function effectOf(club: FlownClub, stock_m: number, conditions: FlightConditions, rise_m: number): Adjustment {
  const step = Math.round(Math.log(stock_m) / CARRY_STEP_LOG);
  const launchKey = `${club.kind}|${club.loft_deg}|${club.height}|${step}`;
  const key = `${launchKey}|${conditionsKey(conditions)}|${rise_m}`;
  const kept = answers.get(key);
  if (kept) return kept;
  const ready = readyLaunch(launchKey, club, metres(Math.exp(step * CARRY_STEP_LOG)));
  const answer: Adjustment =
    typeof ready === 'string' ? { kind: 'not adjustable', why: ready } : standardise(ready, conditions, rise_m);
  if (answers.size >= MOST_KEPT) answers.clear();
  answers.set(key, answer);
  return answer;
}

function conditionsKey({ density, wind }: FlightConditions): string {
  if (wind.kind === 'direction unknown') return `${density}|${wind.mps}|${wind.reference_m}`;
  return `${density}|${wind.wind.head_mps}|${wind.wind.fromRight_mps}|${wind.wind.reference_m}`;
}

function readyLaunch(key: string, club: FlownClub, carry_m: Metres): Standardiser | string {
  const kept = launches.get(key);
  if (kept !== undefined) return kept;
  const launch = launchFor(club, carry_m);
  const ready = launch.kind === 'launch' ? standardiser(launch) : launch.why;
  if (launches.size >= MOST_KEPT) launches.clear();
  launches.set(key, ready);
  return ready;
}
