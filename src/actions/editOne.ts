import type { Round } from '../golf/round.ts';
import { type Shot, shotSchema } from '../golf/shot.ts';
import type { ShotChanges } from '../golf/shotEntry.ts';
import { putShot } from '../logbook/shotStore.ts';
import type { Image } from '../logbook/undoEntry.ts';
import type { NotValid, Refused } from './outcome.ts';
import type { Pen } from './pen.ts';
import { shotSpec } from './shotSpec.ts';
import { valid } from './valid.ts';

/** Changes one of several shots within an action, with the image that takes it back; or the slot that holds what none may. */
export async function editOne(
  pen: Pen,
  round: Round,
  before: Shot,
  changes: ShotChanges & Partial<Pick<Shot, 'hole' | 'number'>>,
): Promise<{ readonly kind: 'edited'; readonly shot: Shot; readonly image: Image } | Refused<NotValid>> {
  const clubId = changes.clubId === undefined ? before.clubId : changes.clubId;
  const specId = clubId === before.clubId ? before.specId : await shotSpec(pen.db, clubId, round);
  const checked = valid(shotSchema, { ...before, specId, ...changes });
  if (checked.kind === 'refused') return checked;
  const shot = pen.stamped(checked.value, before.changedAt);
  await putShot(pen.db, shot);
  const image: Image = { of: 'shot', id: shot.id, roundId: shot.roundId, before, after: shot.changedAt };
  return { kind: 'edited', shot, image };
}
