import type { Keeper } from './keeper.ts';
import type { Outcome, Written } from './outcome.ts';
import { type Pen, takeUpPen } from './pen.ts';

/**
 * Does one action in one transaction: all of it is written, or nothing. The work may run twice when
 * the connection was lost, so an id is made outside it, and a record already there counts as written.
 * It is given `times` the usual time to answer.
 */
export async function write<T, R extends { readonly kind: string } = never>(
  keeper: Keeper,
  work: (pen: Pen) => Promise<Written<T, R>>,
  times = 1,
): Promise<Outcome<T, R>> {
  const deviceId = keeper.newId();
  const stored = await keeper.connection.withDatabase(
    (db) =>
      db.transaction('rw', db.tables, async () => {
        const pen = await takeUpPen(db, keeper.clock.now(), deviceId);
        return work(pen);
      }),
    times,
  );
  if (stored.kind !== 'ok') return { kind: 'unsaved', why: stored } as Outcome<T, R>;
  const done = stored.value;
  return (done.kind === 'written' ? { kind: 'saved', value: done.value } : done) as Outcome<T, R>;
}
