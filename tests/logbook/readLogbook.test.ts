import { expect, test } from 'vitest';
import { readLogbook } from '../../src/logbook/readLogbook.ts';
import { replaceLogbook } from '../../src/logbook/replaceLogbook.ts';
import { logbookOf, phone, reading } from '../actions/phone.ts';
import { roundOf, shotOf } from '../golf/shotOf.ts';

const ROUNDS = 250;
const SHOTS_A_ROUND = 80;

test('20,000 shots are read whole, one request a store; the time is printed, not judged', {
  timeout: 60_000,
}, async () => {
  const keeper = phone().tab({ patience_ms: 50_000 });
  const logbook = await logbookOf(keeper);
  const rounds = Array.from({ length: ROUNDS }, (_, index) => roundOf(`r${index}`, { closed: true }));
  const shots = rounds.flatMap(({ id: roundId }) =>
    Array.from({ length: SHOTS_A_ROUND }, (_, index) =>
      shotOf(`${roundId}-${index}`, { roundId, hole: (index % 18) + 1, number: Math.floor(index / 18) + 1 }),
    ),
  );
  const wrote = performance.now();
  await reading(keeper, (db) => replaceLogbook(db, { ...logbook, rounds, shots }));
  const written = performance.now() - wrote;
  const { getAll } = IDBObjectStore.prototype;
  let requests = 0;
  IDBObjectStore.prototype.getAll = function (...args) {
    requests += 1;
    return getAll.apply(this, args);
  };
  const began = performance.now();
  const read = await reading(keeper, readLogbook);
  const took = performance.now() - began;
  IDBObjectStore.prototype.getAll = getAll;
  console.log(
    `20,000 shots in a simulated store: written in ${written.toFixed(0)} ms, read in ${took.toFixed(0)} ms, ${requests} requests`,
  );
  expect(read.shots).toHaveLength(ROUNDS * SHOTS_A_ROUND);
  expect(new Set(read.shots.map((shot) => shot.id)).size).toBe(ROUNDS * SHOTS_A_ROUND);
  expect(requests).toBe(8);
});
