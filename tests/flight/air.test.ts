import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Air, airDensity, pressureAtAltitude, STANDARD_DENSITY } from '../../src/flight/air.ts';
import { celsius } from '../../src/units/celsius.ts';
import { hectopascals } from '../../src/units/hectopascals.ts';
import { metres } from '../../src/units/metres.ts';
import { percent } from '../../src/units/percent.ts';

const NOTHING: Air = { temperature_C: null, humidity_pct: null, pressure_hPa: null, altitude_m: null };

test('pressure and altitude together are a breach that names both', () => {
  expect(() => airDensity({ ...NOTHING, pressure_hPa: hectopascals(900), altitude_m: metres(1000) })).toThrow(
    /900 hPa and altitude 1000 m/,
  );
});

test('an altitude and the pressure usual there make the same air', () => {
  const byAltitude = airDensity({ ...NOTHING, altitude_m: metres(1234) });
  const byPressure = airDensity({ ...NOTHING, pressure_hPa: pressureAtAltitude(metres(1234)) });
  expect(byAltitude).toBe(byPressure);
  expect(byAltitude).toBeLessThan(STANDARD_DENSITY);
});

test.each([
  { air: { ...NOTHING, temperature_C: celsius(61) }, names: /61 °C/ },
  { air: { ...NOTHING, humidity_pct: percent(101) }, names: /101 %/ },
  { air: { ...NOTHING, pressure_hPa: hectopascals(1200) }, names: /1200 hPa/ },
  { air: { ...NOTHING, altitude_m: metres(20_000) }, names: /20000 m/ },
])('a figure out of range is a breach that names it: $names', ({ air, names }) => {
  expect(() => airDensity(air)).toThrow(names);
});

test('air gets lighter with warmth, with damp and with altitude, over the whole range', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -40, max: 59, noNaN: true }),
      fc.double({ min: 0, max: 99, noNaN: true }),
      fc.double({ min: -500, max: 5900, noNaN: true }),
      (t, h, a) => {
        const at = (dt: number, dh: number, da: number): number =>
          airDensity({
            temperature_C: celsius(t + dt),
            humidity_pct: percent(h + dh),
            pressure_hPa: null,
            altitude_m: metres(a + da),
          });
        const here = at(0, 0, 0);
        expect(here).toBeGreaterThan(0.4);
        expect(here).toBeLessThan(1.75);
        expect(at(1, 0, 0)).toBeLessThan(here);
        expect(at(0, 1, 0)).toBeLessThan(here);
        expect(at(0, 0, 100)).toBeLessThan(here);
      },
    ),
  );
});
