import type { MarkedPlace } from '../../../golf/markChain.ts';
import type { ShotChanges } from '../../../golf/shotEntry.ts';
import { note, type ShotForm, skip } from '../shot/shotForm.ts';
import type { Asking } from '../shot/slots.ts';

/** The form after a place of its shot was marked. Where the pitch was asked for and is thereby known, the next slot is. */
export function markedForm(form: ShotForm, place: MarkedPlace, changes: ShotChanges, asking: Asking): ShotForm {
  const noted = note(form, changes);
  return place === 'pitch' && noted.slot === 'pitch' && noted.entry.carry !== null ? skip(noted, asking) : noted;
}
