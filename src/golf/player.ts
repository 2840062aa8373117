import * as z from 'zod/mini';
import { changedKeys } from './changed.ts';
import { idField, nameField } from './text.ts';

/** Whose logbook it is. The name is a nickname of the player's choice. */
export const playerSchema = z.looseObject({
  id: idField,
  name: z._default(nameField, ''),
  hand: z._default(z.enum(['right', 'left']), 'right'),
  units: z._default(z.enum(['yards', 'metres']), 'yards'),
  ...changedKeys,
});
export type Player = z.infer<typeof playerSchema>;
