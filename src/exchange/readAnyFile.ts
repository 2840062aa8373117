import { type CarrybookFile, readCarrybookValue } from './carrybookFile.ts';
import { LOGBOOK_BYTES, objectReading, parseDocument, sizeRefusal, utf8Bytes } from './documentText.ts';
import { foundWords, type Reading, refused, WHOLE_FILE } from './refusal.ts';
import { type ReviewFile, readReviewValue } from './reviewFile.ts';
import { readTeamValue, TEAM_BYTES, type TeamFile } from './teamFile.ts';

/** A file of any of the three formats. */
export type AnyFile =
  | { readonly kind: 'carrybook'; readonly file: CarrybookFile }
  | { readonly kind: 'team'; readonly file: TeamFile }
  | { readonly kind: 'review'; readonly file: ReviewFile };

function as<K extends AnyFile['kind'], F>(kind: K, reading: Reading<F>): Reading<{ kind: K; file: F }> {
  return reading.kind === 'refused' ? reading : { kind: 'read', value: { kind, file: reading.value } };
}

/** Reads a golfer's, a team's or a review file, by the word under `format`. */
export function readAnyFile(text: string): Reading<AnyFile> {
  const bytes = utf8Bytes(text);
  const farTooBig = sizeRefusal(bytes, TEAM_BYTES, WHOLE_FILE);
  if (farTooBig) return refused([farTooBig]);
  const parsed = parseDocument(text);
  if (parsed.kind === 'refused') return parsed;
  const head = objectReading(parsed.value);
  if (head.kind === 'refused') return head;
  const { format } = head.value;
  if (format === 'carrybook-team') return as('team', readTeamValue(parsed.value, bytes));
  const tooBig = sizeRefusal(bytes, LOGBOOK_BYTES, WHOLE_FILE);
  if (tooBig) return refused([tooBig]);
  if (format === 'carrybook') return as('carrybook', readCarrybookValue(parsed.value));
  if (format === 'carrybook-review') return as('review', readReviewValue(parsed.value));
  const expected = '"carrybook", "carrybook-team" or "carrybook-review"';
  return refused([{ path: 'format', expected, found: foundWords(format) }]);
}
