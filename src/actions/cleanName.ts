import { cleanText, NAME_LIMIT } from '../golf/text.ts';

/** A name as it is kept: cleaned, on one line, and not too long. */
export function cleanName(name: string): string {
  return cleanText(name).replace(/\s+/g, ' ').trim().slice(0, NAME_LIMIT);
}
