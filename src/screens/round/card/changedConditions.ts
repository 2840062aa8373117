import type { Conditions } from '../../../golf/conditions.ts';

/**
 * The conditions with what the golfer changed in the form, and all else as it was stored: a form shows rounded figures,
 * and one that was not touched must not round what it shows.
 *
 * @param stored what the round holds.
 * @param before what the untouched form reads as.
 * @param after what the form reads as now.
 */
export function changedConditions(stored: Conditions, before: Conditions, after: Conditions): Conditions {
  const isSame = (...keys: readonly (keyof Conditions)[]) => keys.every((key) => before[key] === after[key]);
  const isSameWind = isSame('wind_mps', 'windFrom_deg');
  const wind = isSameWind ? stored : after;
  return {
    ...stored,
    temperature_C: isSame('temperature_C') ? stored.temperature_C : after.temperature_C,
    altitude_m: isSame('altitude_m') ? stored.altitude_m : after.altitude_m,
    pressure_hPa: isSame('pressure_hPa') ? stored.pressure_hPa : after.pressure_hPa,
    windFrom_deg: wind.windFrom_deg,
    wind_mps: wind.wind_mps,
    windReference_m: wind.windReference_m,
    ground: after.ground,
  };
}
