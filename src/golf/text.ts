import * as z from 'zod/mini';

/** Longest name of a player, club, course or set of tees, in UTF-16 units. */
export const NAME_LIMIT = 60;

/** Longest note, in UTF-16 units. */
export const NOTE_LIMIT = 2000;

/**
 * Takes out what may not stand in a text of the logbook: control characters (a new line and a tab
 * stay), marks that turn the writing direction, and lone surrogates.
 *
 * Source: Unicode 15 categories Cc and Bidi_Control.
 */
export function cleanText(text: string): string {
  return text.replace(/(?![\t\n])[\p{Cc}\p{Bidi_Control}\p{Surrogate}]/gu, '');
}

const cleaned = z.overwrite((text: string) => cleanText(text));

/** A name: at most {@link NAME_LIMIT} characters, cleaned by {@link cleanText}. */
export const nameField = z.string().check(z.maxLength(NAME_LIMIT), cleaned);

/** A note: at most {@link NOTE_LIMIT} characters, cleaned by {@link cleanText}. */
export const noteField = z.string().check(z.maxLength(NOTE_LIMIT), cleaned);

/** The id of a record: 1 to 100 characters, letters, digits and `-_.:` only, so that it is safe anywhere. */
export const idField = z.string().check(z.regex(/^[A-Za-z0-9_.:-]{1,100}$/));
