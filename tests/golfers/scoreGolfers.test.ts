import { afterAll, describe, expect, test } from 'vitest';
import { composeBook } from '../../src/book/composeBook.ts';
import { boundsOf, golferCount, scoreTable } from './bounds.ts';
import { scoreWorld, type WorldScore } from './score.ts';
import { worlds } from './worlds.ts';

const scores = new Map<string, WorldScore>();

afterAll(() => {
  console.log(`\n${scoreTable([...scores.values()])}\n`);
});

// The bounds are this project's own goals; the golfers are invented (see worlds.ts), none of them drawn from the model's prior.
describe.each(worlds)('$name', (world) => {
  const bounds = boundsOf(world.name);
  const score = () => {
    const found = scores.get(world.name) ?? scoreWorld(world, golferCount(), composeBook);
    scores.set(world.name, found);
    return found;
  };

  test(`stock carries err at most ${bounds.ratio} of what plain medians do`, () => {
    expect(score().all.cells).toBeGreaterThan(10 * golferCount());
    expect(score().all.ratio).toBeLessThanOrEqual(bounds.ratio);
  });

  if (bounds.partialRatio !== null) {
    const most = bounds.partialRatio;
    test(`partial swings at most ${most}`, () => {
      expect(score().partial.cells).toBeGreaterThan(4 * golferCount());
      expect(score().partial.ratio).toBeLessThanOrEqual(most);
    });
  }

  test(`80 % intervals hold the truth in ${bounds.coverage.join(' to ')}`, () => {
    expect(score().all.coverage).toBeGreaterThanOrEqual(bounds.coverage[0]);
    expect(score().all.coverage).toBeLessThanOrEqual(bounds.coverage[1]);
  });

  test(`the next ball falls between P10 and P90 with ${bounds.nextBall.join(' to ')}`, () => {
    expect(score().all.nextBall).toBeGreaterThanOrEqual(bounds.nextBall[0]);
    expect(score().all.nextBall).toBeLessThanOrEqual(bounds.nextBall[1]);
  });

  test('nothing out of order', () => {
    expect(score().orderViolations).toBe(0);
  });

  test('every cell answered', () => {
    expect(score().unanswered).toBe(0);
  });
});
