import { afterAll, describe, expect, test } from 'vitest';
import { composeBook } from '../../src/book/composeBook.ts';
import { BASE_PARTIAL_RATIO, boundsOf, golferCount, scoreTable } from './bounds.ts';
import { scoreWorld, type WorldScore } from './score.ts';
import { base, type World, worlds } from './worlds.ts';

const scores = new Map<string, WorldScore>();

afterAll(() => {
  console.log(`\n${scoreTable([...scores.values()])}\n`);
});

function scoreOf(world: World): WorldScore {
  const found = scores.get(world.name) ?? scoreWorld(world, golferCount(), composeBook);
  scores.set(world.name, found);
  return found;
}

// The bounds are this project's own goals; the golfers are invented (see worlds.ts), none of them drawn from the model's prior.
describe.each(worlds)('$name', (world) => {
  const bounds = boundsOf(world.name);

  test(`stock carries err at most ${bounds.ratio} of what plain medians do`, () => {
    const { all } = scoreOf(world);
    expect(all.cells).toBeGreaterThan(10 * golferCount());
    expect(all.ratio).toBeLessThanOrEqual(bounds.ratio);
  });

  test(`80 % intervals hold the truth in ${bounds.coverage.join(' to ')}`, () => {
    const { all } = scoreOf(world);
    expect(all.coverage).toBeGreaterThanOrEqual(bounds.coverage[0]);
    expect(all.coverage).toBeLessThanOrEqual(bounds.coverage[1]);
  });

  test(`the next ball falls between P10 and P90 with ${bounds.nextBall.join(' to ')}`, () => {
    const { all } = scoreOf(world);
    expect(all.nextBall).toBeGreaterThanOrEqual(bounds.nextBall[0]);
    expect(all.nextBall).toBeLessThanOrEqual(bounds.nextBall[1]);
  });

  test('nothing out of order', () => {
    expect(scoreOf(world).orderViolations).toBe(0);
  });

  test('every cell answered', () => {
    expect(scoreOf(world).unanswered).toBe(0);
  });
});

test(`base: partial swings err at most ${BASE_PARTIAL_RATIO} of what plain medians do`, () => {
  const { partial } = scoreOf(base);
  expect(partial.cells).toBeGreaterThan(4 * golferCount());
  expect(partial.ratio).toBeLessThanOrEqual(BASE_PARTIAL_RATIO);
});
