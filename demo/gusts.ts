import type { ConditionsRecord, ShotRecord } from './records.ts';
import type { RoundPlan, Weather } from './seasonPlan.ts';
import type { SeededNumbers } from './seededNumbers.ts';
import type { Gust } from './weatherResponse.ts';

/** Wind at 2 m over wind at 10 m in open ground: ln(2.03 ÷ 0.03) ÷ ln(10.03 ÷ 0.03), the logarithmic law. */
const FELT_SHARE = Math.log(2.03 / 0.03) / Math.log(10.03 / 0.03);

/** The wind at the moment of one shot: the round's wind, a little stronger or weaker, a little turned. */
export function gustOf(weather: Weather, numbers: SeededNumbers): Gust {
  return {
    mps: weather.wind_mps * Math.exp(0.15 * numbers.normal()),
    from_deg: weather.windFrom_deg + 10 * numbers.normal(),
  };
}

/** What the golfer notes of the wind on a shot: now and then, by feel, to the half hour and half metre a second. */
export function windNote(gust: Gust, bearing_deg: number, numbers: SeededNumbers): ShotRecord['wind'] {
  if (!numbers.chance(0.3)) return null;
  const felt = gust.mps * FELT_SHARE * Math.exp(0.15 * numbers.normal());
  const mps = Math.round(2 * felt) / 2;
  if (mps < 0.5) return 'calm';
  const clock = ((((gust.from_deg - bearing_deg) / 30) % 12) + 12) % 12;
  const from_clock = Math.round(2 * clock) / 2 || 12;
  return { from_clock, mps, reference_m: 2, how: 'felt' };
}

/** What the golfer notes at the start of a round: felt wind mostly, a forecast where the round is by the Rules. */
export function conditionsNoted(plan: Pick<RoundPlan, 'weather' | 'windNoted' | 'play'>): ConditionsRecord {
  const { weather, windNoted } = plan;
  const forecast = plan.play === 'rules';
  const wind = weather.wind_mps * (forecast ? 1 : FELT_SHARE);
  return {
    temperature_C: weather.temperature_C,
    pressure_hPa: null,
    altitude_m: weather.altitude_m,
    humidity_pct: forecast ? 65 : null,
    windFrom_deg: windNoted ? weather.windFrom_deg : null,
    wind_mps: windNoted ? Math.round(2 * wind) / 2 : null,
    windReference_m: forecast ? 10 : 2,
    ground: weather.ground,
  };
}
