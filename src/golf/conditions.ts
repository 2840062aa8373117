import * as z from 'zod/mini';
import type { Celsius } from '../units/celsius.ts';
import type { Degrees } from '../units/degrees.ts';
import type { Hectopascals } from '../units/hectopascals.ts';
import type { Metres } from '../units/metres.ts';
import type { MetresPerSecond } from '../units/metresPerSecond.ts';
import type { Percent } from '../units/percent.ts';
import { quantityField } from '../units/quantityField.ts';

/** How hard the ground is: decides the roll. */
export const groundField = z.enum(['soft', 'normal', 'firm']);
export type Ground = z.infer<typeof groundField>;

const nothingKnown = {
  temperature_C: null,
  pressure_hPa: null,
  altitude_m: null,
  humidity_pct: null,
  windFrom_deg: null,
  wind_mps: null,
  windReference_m: 2,
  ground: 'normal',
};

/**
 * The weather and ground of a round as the golfer noted it; null: not noted. `windFrom_deg` is the
 * bearing the wind comes from, clockwise from north. `windReference_m` is the height the wind speed
 * belongs to: 2 for felt, 10 for a forecast.
 */
export const conditionsSchema = z._default(
  z.looseObject({
    temperature_C: z._default(z.nullable(quantityField<Celsius>(-40, 60)), null),
    pressure_hPa: z._default(z.nullable(quantityField<Hectopascals>(500, 1100)), null),
    altitude_m: z._default(z.nullable(quantityField<Metres>(-500, 6000)), null),
    humidity_pct: z._default(z.nullable(quantityField<Percent>(0, 100)), null),
    windFrom_deg: z._default(z.nullable(quantityField<Degrees>(0, 360)), null),
    wind_mps: z._default(z.nullable(quantityField<MetresPerSecond>(0, 60)), null),
    windReference_m: z._default(quantityField<Metres>(0.1, 100), 2 as never),
    ground: z._default(groundField, 'normal'),
  }),
  nothingKnown as never,
);
export type Conditions = z.infer<typeof conditionsSchema>;
