import { ONLY } from '../logbook/database.ts';
import type { Draft } from '../logbook/draft.ts';
import type { Keeper } from './keeper.ts';
import type { Outcome } from './outcome.ts';

/** Keeps a half-entered shot, so that a reload lands on the same slot. Nothing else is touched or stamped. */
export async function saveDraft(keeper: Keeper, draft: Draft): Promise<Outcome> {
  const stored = await keeper.connection.withDatabase((db) => db.draft.put({ ...draft, key: ONLY }));
  return stored.kind === 'ok' ? { kind: 'saved', value: undefined } : { kind: 'unsaved', why: stored };
}

/** Lets the half-entered shot go, once it is logged or given up. */
export async function clearDraft(keeper: Keeper): Promise<Outcome> {
  const stored = await keeper.connection.withDatabase((db) => db.draft.delete(ONLY));
  return stored.kind === 'ok' ? { kind: 'saved', value: undefined } : { kind: 'unsaved', why: stored };
}
