import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { celsius } from '../../src/units/celsius.ts';
import { days } from '../../src/units/days.ts';
import { degrees } from '../../src/units/degrees.ts';
import { celsiusFromFahrenheit, fahrenheit, fahrenheitFromCelsius } from '../../src/units/fahrenheit.ts';
import { hectopascals } from '../../src/units/hectopascals.ts';
import { inches, inchesFromMetres, metresFromInches } from '../../src/units/inches.ts';
import { type Metres, metres } from '../../src/units/metres.ts';
import { metresPerSecond } from '../../src/units/metresPerSecond.ts';
import {
  metresPerSecondFromMilesPerHour,
  milesPerHour,
  milesPerHourFromMetresPerSecond,
} from '../../src/units/milesPerHour.ts';
import { percent } from '../../src/units/percent.ts';
import { quantityField } from '../../src/units/quantityField.ts';
import { METRES_PER_YARD, metresFromYards, yards, yardsFromMetres } from '../../src/units/yards.ts';

describe('exact by definition', () => {
  const yard = 'International yard and pound agreement, 1959';
  const mile = 'International yard and pound agreement, 1959: 1760 yd to the mile';
  const scale =
    'definition of the two scales: water freezes at 0 °C = 32 °F and boils at 100 °C = 212 °F, equal at −40';
  const rows: { what: string; actual: number; expected: number; tolerance: number; source: string }[] = [
    { what: '1 yd in m', actual: metresFromYards(yards(1)), expected: 0.9144, tolerance: 0, source: yard },
    { what: '1 in in m', actual: metresFromInches(inches(1)), expected: 0.0254, tolerance: 0, source: yard },
    { what: '0.9144 m in in', actual: inchesFromMetres(metres(0.9144)), expected: 36, tolerance: 1e-14, source: yard },
    { what: '1250 yd in m', actual: metresFromYards(yards(1250)), expected: 1143, tolerance: 0, source: yard },
    { what: '0.9144 m in yd', actual: yardsFromMetres(metres(0.9144)), expected: 1, tolerance: 0, source: yard },
    { what: '−9.144 m in yd', actual: yardsFromMetres(metres(-9.144)), expected: -10, tolerance: 0, source: yard },
    { what: 'm in a yard', actual: METRES_PER_YARD, expected: 0.9144, tolerance: 0, source: yard },
    {
      what: '1 mph in m/s',
      actual: metresPerSecondFromMilesPerHour(milesPerHour(1)),
      expected: 0.44704,
      tolerance: 1e-16,
      source: mile,
    },
    {
      what: '26.8224 m/s in mph',
      actual: milesPerHourFromMetresPerSecond(metresPerSecond(26.8224)),
      expected: 60,
      tolerance: 1e-13,
      source: mile,
    },
    { what: '0 °C in °F', actual: fahrenheitFromCelsius(celsius(0)), expected: 32, tolerance: 0, source: scale },
    { what: '100 °C in °F', actual: fahrenheitFromCelsius(celsius(100)), expected: 212, tolerance: 0, source: scale },
    {
      what: '−40 °F in °C',
      actual: celsiusFromFahrenheit(fahrenheit(-40)),
      expected: -40,
      tolerance: 1e-14,
      source: scale,
    },
    {
      what: '212 °F in °C',
      actual: celsiusFromFahrenheit(fahrenheit(212)),
      expected: 100,
      tolerance: 1e-13,
      source: scale,
    },
  ];
  test.each(rows)('$what is $expected: $source', ({ actual, expected, tolerance }) => {
    expect(Math.abs(actual - expected)).toBeLessThanOrEqual(tolerance);
  });
});

test('there and back again is the same figure, sign kept', () => {
  fc.assert(
    fc.property(fc.double({ min: -1000, max: 1000, noNaN: true }), (figure) => {
      expect(Math.abs(yardsFromMetres(metresFromYards(yards(figure))) - figure)).toBeLessThanOrEqual(1e-12);
      expect(Math.abs(celsiusFromFahrenheit(fahrenheitFromCelsius(celsius(figure))) - figure)).toBeLessThanOrEqual(
        1e-12,
      );
      const speed = metresPerSecondFromMilesPerHour(milesPerHour(figure));
      expect(Math.abs(milesPerHourFromMetresPerSecond(speed) - figure)).toBeLessThanOrEqual(1e-12);
      expect(speed * figure).toBeGreaterThanOrEqual(0);
    }),
  );
});

describe('what is no finite number is refused with the value and the unit', () => {
  const rows: { symbol: string; make: (value: number) => number }[] = [
    { symbol: 'm', make: metres },
    { symbol: 'yd', make: yards },
    { symbol: 'in', make: inches },
    { symbol: 'm/s', make: metresPerSecond },
    { symbol: 'mph', make: milesPerHour },
    { symbol: '°', make: degrees },
    { symbol: '°C', make: celsius },
    { symbol: '°F', make: fahrenheit },
    { symbol: 'hPa', make: hectopascals },
    { symbol: '%', make: percent },
    { symbol: 'd', make: days },
  ];
  test.each(rows)('$symbol', ({ symbol, make }) => {
    for (const value of [Number.NaN, Infinity, -Infinity]) {
      expect(() => make(value)).toThrow(
        new RangeError(`${value} ${symbol} is not a quantity: a finite number is needed`),
      );
    }
    expect(make(-1.5)).toBe(-1.5);
  });
});

test('a field from outside takes its ends, and nothing beyond them or that is no number', () => {
  const field = quantityField<Metres>(-5, 400);
  expect(z.parse(field, -5)).toBe(-5);
  expect(z.parse(field, 400)).toBe(400);
  for (const wrong of [-5.001, 400.001, Number.NaN, Infinity, '140', null, undefined]) {
    expect(z.safeParse(field, wrong).success).toBe(false);
  }
});
