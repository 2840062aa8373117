import { expect, test } from 'vitest';
import { bearingOfClock, bearingOfPoint, compassPoints, pointOfBearing } from '../../src/golf/compass.ts';
import { forceOfSpeed, speedOfForce, windForces } from '../../src/golf/windForce.ts';
import { degrees } from '../../src/units/degrees.ts';
import { metresPerSecond } from '../../src/units/metresPerSecond.ts';
import { milesPerHourFromMetresPerSecond } from '../../src/units/milesPerHour.ts';

/**
 * Forces in whole miles per hour. Source: Met Office (UK), Beaufort wind force scale: mean speed and limits of
 * each force in mph, from memory.
 */
test.each([
  { force: 2, least: 4, most: 7 },
  { force: 3, least: 8, most: 12 },
  { force: 4, least: 13, most: 18 },
  { force: 5, least: 19, most: 24 },
  { force: 6, least: 25, most: 31 },
] as const)('force $force lies between $least and $most mph', ({ force, least, most }) => {
  const speed = milesPerHourFromMetresPerSecond(speedOfForce(force));
  expect(speed).toBeGreaterThan(least);
  expect(speed).toBeLessThan(most);
});

test('a speed goes back to its force; calm air has none and a gale is the strongest there is', () => {
  for (const force of windForces) expect(forceOfSpeed(speedOfForce(force))).toBe(force);
  expect(forceOfSpeed(metresPerSecond(0.5))).toBeNull();
  expect(forceOfSpeed(metresPerSecond(30))).toBe(6);
});

test('compass points go round the circle and back', () => {
  for (const point of compassPoints) expect(pointOfBearing(bearingOfPoint(point))).toBe(point);
  expect(bearingOfPoint('E')).toBe(90);
  expect(pointOfBearing(degrees(359))).toBe('N');
  expect(pointOfBearing(degrees(-91))).toBe('W');
});

test('the clock against a hole: 12 into, 3 from the right, 6 from behind', () => {
  const east = degrees(90);
  expect(bearingOfClock(12, east)).toBe(90);
  expect(bearingOfClock(3, east)).toBe(180);
  expect(bearingOfClock(6, east)).toBe(270);
  expect(bearingOfClock(9, east)).toBe(0);
});
