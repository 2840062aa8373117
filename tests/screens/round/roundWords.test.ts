import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import { conditionsSchema } from '../../../src/golf/conditions.ts';
import { blankEntry } from '../../../src/golf/shotEntry.ts';
import { outcomeTrouble } from '../../../src/screens/round/outcomeTrouble.ts';
import { holeOnScreen, shownHole } from '../../../src/screens/round/shownHole.ts';
import { earlierCourses } from '../../../src/screens/round/start/earlierCourses.ts';
import { together } from '../../../src/screens/round/together.ts';
import { weatherWords } from '../../../src/screens/round/weatherWords.ts';
import { roundWords } from '../../../src/screens/words/round.ts';
import { roundOf, shotOf } from '../../golf/shotOf.ts';

const weather = (noted: object, temperature: '°F' | '°C' = '°F', windSpeed: 'mph' | 'm/s' | 'km/h' = 'mph') =>
  weatherWords(z.parse(conditionsSchema, noted), { temperature, windSpeed }).replaceAll('\u00a0', ' ');

test.each([
  { noted: {}, says: '' },
  { noted: { temperature_C: 9, ground: 'firm' }, says: '48 °F · firm' },
  { noted: { temperature_C: -5, wind_mps: 0 }, says: '23 °F · no wind' },
  { noted: { wind_mps: 4.4, windFrom_deg: 272 }, says: 'W wind, flags extend, about 10 mph' },
  { noted: { wind_mps: 9.4 }, says: 'wind 21 mph' },
])('$noted is told as “$says”', ({ noted, says }) => {
  expect(weather(noted)).toBe(says);
});

test('the wind is told in the unit chosen', () => {
  const noted = { wind_mps: 5, windFrom_deg: 90 };
  // 5 m/s are 18 km/h (SI, exact) and 11.18 mph (a mile is 1609.344 m, exact).
  expect(weather(noted, '°C', 'km/h')).toBe('E wind, 18 km/h');
  expect(weather(noted, '°C', 'm/s')).toBe('E wind, 5 m/s');
  expect(weather(noted, '°C', 'mph')).toBe('E wind, 11 mph');
});

test('degrees below zero carry a minus sign in °C', () => {
  expect(weather({ temperature_C: -5 }, '°C')).toBe('−5 °C');
});

test('courses played before: each with its tees once, the latest first, the practice ground and the nameless left out', () => {
  const rounds = [
    roundOf('a', { course: 'Larch Hill (invented)', tees: 'white', date: '2026-05-01' }),
    roundOf('b', { course: 'Sedge Common (invented)', tees: '', date: '2026-05-03' }),
    roundOf('c', { course: 'Larch Hill (invented)', tees: 'white', date: '2026-05-04' }),
    roundOf('d', { course: 'Larch Hill (invented)', tees: 'blue', date: '2026-05-02' }),
    roundOf('e', { course: '', date: '2026-05-09' }),
    roundOf('f', { course: 'The range (invented)', play: 'practice ground', date: '2026-05-08' }),
  ];
  expect(earlierCourses(rounds)).toEqual([
    { course: 'Larch Hill (invented)', tees: 'white' },
    { course: 'Sedge Common (invented)', tees: '' },
    { course: 'Larch Hill (invented)', tees: 'blue' },
  ]);
});

test('the hole on the screen: the one last seen, else that of the half-entered shot, else the one to go on with', () => {
  const round = roundOf('r1');
  const shots = [shotOf('s', { hole: 2, outcome: 'holed' })];
  const draft = { roundId: 'r1', hole: 7, shotId: null, slot: null, typed: '', entry: blankEntry(7, 1) };
  expect(holeOnScreen({ round, shots }, null)).toBe(3);
  expect(holeOnScreen({ round, shots }, draft)).toBe(7);
  expect(holeOnScreen({ round, shots }, { ...draft, roundId: 'another' })).toBe(3);
  shownHole.value = { roundId: 'r1', hole: 11 };
  expect(holeOnScreen({ round, shots }, draft)).toBe(11);
  expect(holeOnScreen({ round: roundOf('r2'), shots: [] }, null)).toBe(1);
  shownHole.value = { roundId: 'r1', hole: 40 };
  expect(holeOnScreen({ round, shots }, draft)).toBe(7);
});

test('two readings are there when both are; one that failed is told at once', () => {
  const ready = { kind: 'ready', value: 1 } as const;
  const loading = { kind: 'loading' } as const;
  const failed = { kind: 'failed', why: { kind: 'quota' } } as const;
  expect(together(ready, ready)).toEqual({ kind: 'ready', value: [1, 1] });
  expect(together(ready, loading)).toEqual(loading);
  expect(together(loading, failed)).toEqual(failed);
});

test('an action that did not do as asked says why', () => {
  expect(outcomeTrouble({ kind: 'saved' })).toBeNull();
  expect(outcomeTrouble({ kind: 'unsaved', why: { kind: 'quota' } })).toContain('no room');
  expect(outcomeTrouble({ kind: 'refused', why: { kind: 'gone' } })).toBe(roundWords.gone);
  expect(outcomeTrouble({ kind: 'refused', why: { kind: 'not valid' } })).toBe(roundWords.hole.notValid);
  expect(outcomeTrouble({ kind: 'refused', why: { kind: 'round open' } })).toBe(roundWords.undo['round open']);
});

test('a score against par is said as on a card', () => {
  expect([0, 3, -2].map(roundWords.card.toParWords)).toEqual(['level par', '3 over par', '2 under par']);
  expect(roundWords.rounds.score(40, 9, 9)).toBe('40 strokes');
  expect(roundWords.rounds.score(5, 1, 9)).toBe('5 strokes on 1 of 9 holes');
});
