import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import { markDone } from '../../src/actions/markDone.ts';
import { noteHanded, reviewFileFor, reviewPlayers, withdrawReview } from '../../src/actions/reviewPlayer.ts';
import { startRound } from '../../src/actions/startRound.ts';
import { takeReview } from '../../src/actions/takeReview.ts';
import { writeReviewFile } from '../../src/exchange/reviewFile.ts';
import { rememberedStart } from '../../src/golf/newRound.ts';
import { type Review, reviewSchema } from '../../src/golf/review.ts';
import { logbookOf, phone, refused, saved } from './phone.ts';
import { coach } from './teamBooks.ts';

const TASK = { note: '', task: { balls: 20, due: '2026-06-15' }, swing: '9:00', roundId: null };

test('one task for many golfers, each about their own club, goes to each phone and stands there done', async () => {
  const { team } = coach();
  const player = phone('wren').tab();
  const { id } = (await logbookOf(player)).player;
  const targets = [
    { playerId: id, clubId: 'sw' },
    { playerId: 'other', clubId: 'w56' },
  ];
  const written = saved(await reviewPlayers(team, TASK, targets));
  expect(written.map(({ review }) => review.about.clubId)).toEqual(['sw', 'w56']);
  expect(new Set(written.map((stored) => stored.id)).size).toBe(2);
  const text = saved(await reviewFileFor(team, id));
  expect(text).not.toContain('w56');
  expect(saved(await takeReview(player, text))).toEqual({ new: 1, same: 0, beside: 0 });
  expect(saved(await takeReview(player, text))).toEqual({ new: 0, same: 1, beside: 0 });
  const [review] = (await logbookOf(player)).reviews;
  saved(await markDone(player, review.id, true));
  expect((await logbookOf(player)).done).toMatchObject([{ reviewId: review.id }]);
  expect(saved(await takeReview(player, text))).toEqual({ new: 0, same: 1, beside: 0 });
  expect((await logbookOf(player)).done).toHaveLength(1);
  saved(await markDone(player, review.id, false));
  expect((await logbookOf(player)).done).toHaveLength(0);
  saved(await noteHanded(team, id));
  saved(await withdrawReview(team, written[1].id));
  expect(refused(await withdrawReview(team, written[1].id))).toEqual({ kind: 'gone' });
});

test('what is for somebody else, unreadable, empty, or comes in a round by the Rules is refused', async () => {
  const { team } = coach();
  const player = phone('wren').tab();
  const { id } = (await logbookOf(player)).player;
  expect(
    refused(await reviewPlayers(team, { ...TASK, task: null, note: '  ' }, [{ playerId: id, clubId: null }])),
  ).toMatchObject({ path: 'note' });
  expect(
    refused(await reviewPlayers(team, { ...TASK, task: { balls: -1, due: null } }, [{ playerId: id, clubId: null }])),
  ).toMatchObject({ path: 'task.balls' });
  expect(refused(await takeReview(player, saved(await reviewFileFor(team, 'other'))))).toEqual({
    kind: 'another player',
  });
  expect(refused(await takeReview(player, '{'))).toMatchObject({ kind: 'unreadable' });
  const start = { ...rememberedStart([]), course: 'Larch Hill (invented)', play: 'rules' as const };
  saved(await startRound(player, start));
  expect(refused(await takeReview(player, saved(await reviewFileFor(team, id))))).toEqual({
    kind: 'round by the Rules',
  });
  expect(refused(await markDone(player, 'nothing', true))).toEqual({ kind: 'gone' });
});

test('two wordings of one review are both kept, whichever comes first and however often', async () => {
  const wordings = ['first', 'second', 'third'].map(
    (note, i): Review =>
      z.parse(reviewSchema, { id: 'v', note, changedAt: `2026-05-0${i + 1}T08:00:00Z`, device: `d${i % 2}` }),
  );
  const endOf = async (order: readonly number[]) => {
    const player = phone('wren').tab();
    const { id } = (await logbookOf(player)).player;
    for (const i of order) {
      saved(
        await takeReview(
          player,
          writeReviewFile({ format: 'carrybook-review', version: 1, playerId: id, reviews: [wordings[i]] }),
        ),
      );
    }
    return (await logbookOf(player)).reviews.map((review) => [review.id, review.note]);
  };
  const whole = await endOf([0, 1, 2]);
  expect(whole.map(([, note]) => note).sort()).toEqual(['first', 'second', 'third']);
  expect(whole.find(([id]) => id === 'v')?.[1]).toBe('third');
  await fc.assert(
    fc.asyncProperty(
      fc.shuffledSubarray([0, 1, 2], { minLength: 3 }),
      fc.array(fc.nat(2), { maxLength: 3 }),
      async (order, more) => {
        expect(await endOf([...order, ...more])).toEqual(whole);
      },
    ),
    { numRuns: 15 },
  );
});
