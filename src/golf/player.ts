import * as z from 'zod/mini';
import { changedKeys } from './changed.ts';
import { ownSwingsField } from './swing.ts';
import { idField, nameField } from './text.ts';

/** Whose logbook it is. The name is a nickname of the player's choice; `swings` are positions and words of his own. */
export const playerSchema = z.looseObject({
  id: idField,
  name: z._default(nameField, ''),
  hand: z._default(z.enum(['right', 'left']), 'right'),
  units: z._default(z.enum(['yards', 'metres']), 'yards'),
  swings: ownSwingsField,
  ...changedKeys,
});
export type Player = z.infer<typeof playerSchema>;
