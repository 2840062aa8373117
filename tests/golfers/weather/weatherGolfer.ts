import * as z from 'zod/mini';
import type { FlownKind } from '../../../src/flight/flownClub.ts';
import { conditionsSchema } from '../../../src/golf/conditions.ts';
import { holeSchema } from '../../../src/golf/hole.ts';
import type { Logbook } from '../../../src/golf/logbook.ts';
import type { Round } from '../../../src/golf/round.ts';
import { type Shot, shotSchema } from '../../../src/golf/shot.ts';
import { degrees } from '../../../src/units/degrees.ts';
import { METRES_PER_YARD } from '../../../src/units/yards.ts';
import type { Build } from '../builtBag.ts';
import { type Golfer, makeGolfer } from '../golfer.ts';
import { readCarry } from '../measuring.ts';
import { type RandomNumbers, randomNumbers } from '../randomNumbers.ts';
import { drawOwnLaunch, type FlyBall, otherFlight } from './otherFlight.ts';
import {
  drawEye,
  drawOutingWeather,
  drawShotWeather,
  type Eye,
  noteBearing,
  noteOuting,
  type OutingWeather,
} from './outingWeather.ts';
import type { Setting } from './settings.ts';

/** A golfer whose season had weather, written down three ways. */
export interface WeatherGolfer {
  readonly golfer: Golfer;
  /** The balls that flew through weather, the weather noted as coarsely as a golfer would. */
  readonly noted: Logbook;
  /** The same balls, no weather noted. */
  readonly unnoted: Logbook;
  /** The same balls flown in standard air on level ground. */
  readonly perfect: Logbook;
  readonly altitude_m: number;
  readonly eye: Eye;
  /** The true flight of a club as built at the end of the season or before. */
  readonly flightOf: (build: Build, old: boolean) => FlyBall;
}

/** A shot noted shot by shot is forgotten about this often. */
const NOT_CALLED = 0.1;
/** How wrong a golfer is about a rise: a share, and metres. */
const RISE_SHARE = 0.2;
const RISE_LEAST_m = 1;

/** Reads one ball's carry as the golfer would; the same eye and luck for the same shot in any air. */
function measuredAs(shot: Shot, golfer: Golfer, carry_m: number, numbers: RandomNumbers): object {
  const { habits } = golfer.person;
  const bunker_m = shot.carryAtLeast_m ?? shot.carryAtMost_m;
  if (bunker_m !== null) {
    const cleared = carry_m * Math.exp(numbers.normal(0, 0.01)) > bunker_m;
    return { carryAtLeast_m: cleared ? bunker_m : null, carryAtMost_m: cleared ? null : bunker_m };
  }
  if (shot.carry === null) return {};
  const reading = readCarry(Math.max(2, carry_m / METRES_PER_YARD), shot.swing, habits, numbers);
  return { carry: reading.carry, flag_m: reading.flag_m };
}

/** A golfer of this setting; the same for the same seed. */
export function makeWeatherGolfer(setting: Setting, seed: number): WeatherGolfer {
  const golfer = makeGolfer(setting.world, seed);
  const numbers = randomNumbers(`${setting.world.name}/${seed}/weather`);
  const own = drawOwnLaunch(numbers.fork('launch'));
  const eye = drawEye(setting.seeing, numbers.fork('eye'));
  const altitude_m = numbers.between(...setting.altitude_m);
  const { season, bag } = golfer.person;
  const outings = new Map([...season.rounds, ...season.practice].map((outing) => [outing.id, outing]));

  const weathers = new Map<string, OutingWeather>();
  const noted = new Map<string, Partial<Round>>();
  for (const outing of outings.values()) {
    const stream = numbers.fork(outing.id);
    const weather = drawOutingWeather(setting, altitude_m, outing, stream);
    weathers.set(outing.id, weather);
    noted.set(outing.id, {
      conditions: z.parse(conditionsSchema, noteOuting(weather, altitude_m, eye, stream)),
      holes: weather.holes.map((hole, i) =>
        z.parse(holeSchema, { number: i + 1, bearing_deg: eye.notes === 'the round' ? noteBearing(hole) : null }),
      ),
    });
  }

  const flights = new Map<string, FlyBall>();
  const flightOf = (build: Build, old: boolean): FlyBall => {
    const key = `${build.club.id}|${old}`;
    const loft = old ? build.loftBefore_deg : build.club.loft_deg;
    const kind = build.club.kind as FlownKind;
    const flight = flights.get(key) ?? otherFlight({ kind, loft_deg: degrees(loft), height: null }, own);
    flights.set(key, flight);
    return flight;
  };

  const inWeather: Shot[] = [];
  const without: Shot[] = [];
  const inStandard: Shot[] = [];
  for (const shot of golfer.logbook.shots) {
    const truth = golfer.shots.get(shot.id);
    const weather = weathers.get(shot.roundId);
    const outing = outings.get(shot.roundId);
    const build = bag.find(({ club }) => club.id === truth?.clubId);
    if (!truth || !weather || !outing || !build) throw new RangeError(`shot ${shot.id} is of nowhere`);
    const stream = numbers.fork(shot.id);
    const hole = weather.holes[(shot.hole - 1) % weather.holes.length];
    const { wind, called } = drawShotWeather(weather, hole, eye, stream);
    const old = build.changedOn !== null && outing.date < build.changedOn;
    const flown_m = flightOf(build, old)(truth.carry_m, { density: weather.density, wind }, hole.risePerMetre);
    const rise_m = hole.risePerMetre * truth.carry_m;
    const riseNoted_m = Math.round(rise_m * Math.exp(stream.normal(0, RISE_SHARE)) + stream.normal(0, RISE_LEAST_m));
    const windNoted = eye.notes === 'each shot' && !stream.chance(NOT_CALLED) ? called : null;
    if (flown_m === null) continue;
    const measured = measuredAs(shot, golfer, flown_m, numbers.fork(`${shot.id}/measure`));
    without.push(z.parse(shotSchema, { ...shot, ...measured }));
    inWeather.push(
      z.parse(shotSchema, {
        ...shot,
        ...measured,
        wind: windNoted,
        rise_m: setting.rise.noted && !outing.practice ? riseNoted_m : null,
      }),
    );
    inStandard.push(
      z.parse(shotSchema, { ...shot, ...measuredAs(shot, golfer, truth.carry_m, numbers.fork(`${shot.id}/measure`)) }),
    );
  }
  const rounds = golfer.logbook.rounds.map((round) => ({ ...round, ...noted.get(round.id) }));
  return {
    golfer,
    noted: { ...golfer.logbook, rounds, shots: inWeather },
    unnoted: { ...golfer.logbook, shots: without },
    perfect: { ...golfer.logbook, shots: inStandard },
    altitude_m,
    eye,
    flightOf,
  };
}
