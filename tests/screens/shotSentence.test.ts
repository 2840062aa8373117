import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import { roundSchema } from '../../src/golf/round.ts';
import { shotSchema } from '../../src/golf/shot.ts';
import { shotSentence } from '../../src/screens/yardages/shotSentence.ts';

const ASOF = '2026-06-01T12:00:00Z';
const round = z.parse(roundSchema, { id: 'r', date: '2026-05-02' });

function sentence(shot: object, where: object = {}): string {
  const whole = z.parse(shotSchema, { id: 's', roundId: 'r', hole: 1, clubId: 'c', ...shot });
  return shotSentence(whole, { ...round, ...where }, 'yards', ASOF).replaceAll('\u00a0', ' ');
}

test.each([
  {
    shot: { lie: 'fairway', strike: 'solid', carry: { m: 134.4, by: 'laser', error_m: 2.7 } },
    // By hand: 1.2816 · 2.7 m = 3.46 m = 3.78 yd, rounded up.
    says: '2 May · fairway · solid · 147 yd ± 4',
  },
  { shot: { lie: 'tee', strike: 'thin', total: { m: 201.2 } }, says: '2 May · tee · thin · total 220 yd' },
  { shot: { carryAtLeast_m: 217.6 }, says: '2 May · lie not noted · strike not noted · cleared 238 yd' },
  {
    shot: { lie: 'bare', carryAtLeast_m: 91.44, carryAtMost_m: 109.73, total: { m: 130 } },
    says: '2 May · bare lie · strike not noted · cleared 100 yd, short of 120 yd',
  },
  { shot: { lie: 'light rough', strike: 'fat' }, says: '2 May · light rough · fat' },
])('$says', ({ shot, says }) => {
  expect(sentence(shot)).toBe(says);
});

test('a practice ball says so, and a range ball too', () => {
  const shot = { lie: 'fairway', strike: 'solid' };
  expect(sentence(shot, { play: 'practice ground' })).toBe('2 May · practice ground · solid');
  expect(sentence(shot, { play: 'practice ground', ball: 'range' })).toBe(
    '2 May · practice ground, range ball · solid',
  );
});

test('another year is named', () => {
  expect(sentence({ strike: 'solid', lie: 'tee' }, { date: '2025-10-30' })).toBe('30 Oct 2025 · tee · solid');
});
