import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import { reviewSchema } from '../../src/golf/review.ts';
import { scoringAverages } from '../../src/golf/scoringAverages.ts';
import { withoutSeasons } from '../../src/golf/seasonSpan.ts';
import { taskProgress } from '../../src/golf/taskProgress.ts';
import { trustedMoment } from '../../src/golf/trustedMoment.ts';
import { logbookOf, roundOf, shotOf } from '../book/logbooks.ts';

const holes = (strokes: readonly (number | null)[], pars: readonly number[], slots: object = {}) =>
  strokes.map((n, i) => ({ number: i + 1, par: pars[i % pars.length], strokes: n, ...slots }));

test('averages by par, nines and eighteens side by side, picked-up holes in none', () => {
  const pars = [4, 3, 5, 4, 4, 3, 5, 4, 4];
  const nine = roundOf('n', '2026-05-01', { play: 'rules', holes: holes([5, 3, 6, 4, 4, 4, 5, 4, 4], pars) });
  const eighteen = roundOf('e', '2026-05-02', {
    play: 'casual',
    holes: holes(
      Array.from({ length: 18 }, () => 4),
      pars,
    ),
  });
  const picked = roundOf('p', '2026-05-03', {
    play: 'rules',
    holes: holes([null, 3, 6, 4, 4, 4, 5, 4, 4], pars).map((hole, i) =>
      i === 0 ? { ...hole, result: 'picked up' } : hole,
    ),
  });
  const others = [
    roundOf('old', '2024-05-01', { play: 'rules', holes: holes([9, 9, 9], [3]) }),
    roundOf('practice', '2026-05-04', { play: 'practice ground', holes: holes([9], [3]) }),
    roundOf('open', '2026-05-05', { play: 'rules', closed: false, holes: holes([9, 9, 9], [3]) }),
  ];
  const of = scoringAverages({ rounds: [nine, eighteen, picked, ...others], shots: [] }, '2026-01-01', '2026-12-31');
  // Worked by hand: par 3s 3, 4 | 4 × 4 | 3, 4; the nine is 39 on par 36, the eighteen 72 on par 72.
  expect(of.par3).toEqual({ mean: (3 + 4 + 4 * 4 + 3 + 4) / 8, of: 8 });
  expect(of.par5).toEqual({ mean: (6 + 5 + 4 * 4 + 6 + 5) / 8, of: 8 });
  expect(of.par4?.of).toBe(5 + 10 + 4);
  expect(of.toParANine).toEqual({ mean: (3 + 0 + 0) / 3, of: 3 });
  expect(of.puttsAHole).toBeNull();
  expect(scoringAverages({ rounds: [], shots: [] }, '2026-01-01', '2026-12-31').par3).toBeNull();
});

test('progress of a task is counted from later shots with that club and swing', () => {
  const review = z.parse(reviewSchema, {
    id: 'v',
    at: '2026-05-10T18:00:00Z',
    about: { clubId: 'gw', swing: '9:00' },
    task: { balls: 20, due: '2026-06-01' },
  });
  const at = (id: string, when: string | null, slots: object = {}) =>
    shotOf(id, { clubId: 'gw', swing: '9:00', at: when, ...slots });
  const shots = [
    at('before', '2026-05-10T17:00:00Z'),
    at('after', '2026-05-10T18:30:00Z'),
    at('later', '2026-06-11T10:00:00Z'),
    at('full', '2026-05-11T10:00:00Z', { swing: 'full' }),
    at('chip', '2026-05-11T10:00:00Z', { intent: 'chip' }),
    at('other', '2026-05-11T10:00:00Z', { clubId: 'sw' }),
    at('by-date', null, { roundId: 'r2' }),
    at('same-day', null, { roundId: 'r1' }),
    at('not-yet', '2027-01-01T10:00:00Z'),
  ];
  const rounds = [roundOf('r1', '2026-05-10'), roundOf('r2', '2026-05-16')];
  const progress = taskProgress(review, logbookOf({ rounds, shots }), '2026-06-12T08:00:00Z');
  expect(progress).toEqual({ balls: 20, hit: 3, doneAt: null, isDone: false, daysLate: 11 });
  const done = [{ reviewId: 'v', at: '2026-05-20T08:00:00Z' }];
  expect(taskProgress(review, logbookOf({ rounds, shots, done }), '2026-05-21T08:00:00Z')).toMatchObject({
    hit: 2,
    isDone: true,
    daysLate: -11,
  });
  const whole = { ...review, about: { ...review.about, swing: null } };
  expect(taskProgress(whole, logbookOf({ rounds, shots }), '2026-06-12T08:00:00Z').hit).toBe(4);
});

test('a stretch of days goes with its shots, both ends included', () => {
  const logbook = logbookOf({
    shots: [
      shotOf('a', { roundId: 'r1' }),
      shotOf('b', { roundId: 'r2' }),
      shotOf('c', { roundId: 'r3' }),
      shotOf('gone', { roundId: 'x', at: '2026-05-09T08:00:00Z' }),
    ],
  });
  const left = withoutSeasons(logbook, [{ from: '2026-05-02', to: '2026-05-16' }]);
  expect(left.rounds.map(({ id }) => id)).toEqual(['r3', 'r4']);
  expect(left.shots.map(({ id }) => id)).toEqual(['c']);
  expect(withoutSeasons(logbook, [])).toBe(logbook);
});

test('a file from the future is read for today, one of tomorrow in another time zone as it stands', () => {
  const now = '2026-06-01T12:00:00Z';
  expect(trustedMoment('2026-05-01T00:00:00Z', now)).toEqual({ at: '2026-05-01T00:00:00Z', daysAhead: 0 });
  expect(trustedMoment('2026-06-02T11:00:00Z', now)).toEqual({ at: '2026-06-02T11:00:00Z', daysAhead: 0 });
  expect(trustedMoment('2031-06-01T12:00:00Z', now)).toEqual({ at: '2026-06-01T23:59:59.999Z', daysAhead: 1826 });
});
