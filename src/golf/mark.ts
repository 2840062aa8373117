import * as z from 'zod/mini';
import type { Degrees } from '../units/degrees.ts';
import type { Metres } from '../units/metres.ts';
import { quantityField } from '../units/quantityField.ts';
import { instantField } from './instant.ts';

/**
 * A place marked by satellite: latitude (+ north), longitude (+ east) on WGS 84, and the radius in
 * metres that holds it with 95 % confidence, as the W3C Geolocation recommendation defines accuracy.
 */
export const markSchema = z.looseObject({
  lat_deg: quantityField<Degrees>(-90, 90),
  lon_deg: quantityField<Degrees>(-180, 180),
  accuracy_m: z._default(z.nullable(quantityField<Metres>(0, 100_000)), null),
  at: z._default(z.nullable(instantField), null),
});
export type Mark = z.infer<typeof markSchema>;
