import type { DistanceUnit } from '../../distance.ts';
import { fill, type ShotForm } from './shotForm.ts';
import { type Asking, isNumberSlot } from './slots.ts';
import { distanceTyped, isDistance, spokenDistance } from './spokenDistance.ts';

/** What came of entering digits: the form that follows, or that they say no distance a shot may hold. */
export type Entered = { readonly kind: 'entered'; readonly form: ShotForm } | { readonly kind: 'outside' };

/**
 * Takes digits over into the open number slot and moves on. A distance other than the flag's is
 * "typed" unless the golfer paced or judged: a laser looks at flags.
 */
export function enterDistance(form: ShotForm, typed: string, unit: DistanceUnit, asking: Asking): Entered {
  const { slot } = form;
  if (!isNumberSlot(slot) || !isDistance(typed, unit)) return { kind: 'outside' };
  const by = slot === 'flag' || form.by !== 'laser' ? form.by : 'typed';
  return { kind: 'entered', form: fill(form, distanceTyped(slot, spokenDistance(Number(typed), unit), by), asking) };
}
