import { type DayConditions, dayCard } from '../../../src/book/dayCard.ts';
import { fitBook } from '../../../src/book/fitBook.ts';
import { airDensity, pressureAtAltitude } from '../../../src/flight/air.ts';
import { FORECAST_HEIGHT, windFromClock } from '../../../src/flight/wind.ts';
import { FORCE_REFERENCE_M, forceOfSpeed, speedOfForce } from '../../../src/golf/windForce.ts';
import { celsius } from '../../../src/units/celsius.ts';
import { hectopascals } from '../../../src/units/hectopascals.ts';
import { metres } from '../../../src/units/metres.ts';
import { metresPerSecond } from '../../../src/units/metresPerSecond.ts';
import { percent } from '../../../src/units/percent.ts';
import { randomNumbers } from '../randomNumbers.ts';
import { cellKey } from '../trueCells.ts';
import type { WeatherGolfer } from './weatherGolfer.ts';

/** True next balls flown through the new day, for each club and swing. */
const BALLS = 40;

/** How the card for a new day held: shares of true next balls between P10 and P90, one for each club and swing. */
export interface ForecastRow {
  readonly nextBall: number;
  /** Whether the true stock carry of that day lies in the card's 80 % interval. */
  readonly inside: boolean;
}

/**
 * The card for a day unlike the golfer's rounds, held against his true next balls in it.
 *
 * The day: 0 to 34 °C; at home or, four times in ten, up to 1,800 m higher; calm to a fresh breeze from
 * any hour of the clock. The card is told whole °C, altitude to 50 m, the wind's force and the hour; the
 * true wind is steady to 10 % and 5° about a strength within that force. All invented for the test.
 */
export function scoreForecast(made: WeatherGolfer, seed: number): ForecastRow[] {
  const { golfer, noted, flightOf } = made;
  const numbers = randomNumbers(`${golfer.person.world.name}/${seed}/new day`);
  const temperature = numbers.between(0, 34);
  const altitude = made.altitude_m + (numbers.chance(0.4) ? numbers.between(0, 1800) : 0);
  const density = airDensity({
    temperature_C: celsius(temperature),
    humidity_pct: percent(numbers.between(35, 95)),
    pressure_hPa: hectopascals(pressureAtAltitude(metres(altitude)) + numbers.normal(0, 8)),
    altitude_m: null,
  });
  const mps = numbers.between(0, 8);
  const clock = numbers.between(0, 12);
  const force = forceOfSpeed(metresPerSecond(mps));
  const day: DayConditions = {
    temperature_C: celsius(Math.round(temperature)),
    humidity_pct: null,
    pressure_hPa: null,
    altitude_m: metres(Math.round(altitude / 50) * 50),
    wind:
      force === null
        ? 'calm'
        : {
            from_clock: Math.round(clock) % 12,
            mps: speedOfForce(force),
            reference_m: metres(FORCE_REFERENCE_M),
            how: 'forecast',
          },
    ground: 'normal',
  };
  const card = dayCard(fitBook(noted, golfer.asOf), noted.clubs, day);
  if (card.kind !== 'card') throw new RangeError(card.why);
  return card.numbers.flatMap((number): ForecastRow[] => {
    const truth = golfer.cells.get(cellKey(number.clubId, number.specId, number.swing));
    const build = golfer.person.bag.find(({ club }) => club.id === number.clubId);
    if (number.kind !== 'number' || !truth?.current || truth.measured_m.length === 0 || !build) return [];
    const flight = flightOf(build, false);
    const surroundings = (strength: number, hour: number) => ({
      density,
      wind: windFromClock(hour, metresPerSecond(strength), FORECAST_HEIGHT),
    });
    const every = truth.nextBalls_m.length / BALLS;
    let between = 0;
    for (let k = 0; k < BALLS; k++) {
      const gust = mps * Math.exp(numbers.normal(0, 0.1));
      const carry_m = flight(
        truth.nextBalls_m[Math.floor((k + 0.5) * every)],
        surroundings(gust, clock + numbers.normal(0, 5) / 30),
        0,
      );
      if (carry_m !== null && carry_m >= number.next_m[1] && carry_m <= number.next_m[17]) between++;
    }
    const stock_m = flight(truth.stock_m, surroundings(mps, clock), 0) ?? Number.NaN;
    return [{ nextBall: between / BALLS, inside: number.lo80_m <= stock_m && stock_m <= number.hi80_m }];
  });
}
