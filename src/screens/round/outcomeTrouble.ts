import type { ByTheRules } from '../../actions/heldBack.ts';
import type { StorageTrouble } from '../../logbook/storageTrouble.ts';
import { byTheRules } from '../words/byTheRules.ts';
import { roundWords } from '../words/round.ts';
import { words as allWords } from '../words.ts';

interface Refusal {
  readonly kind: 'gone' | 'not valid' | 'round open';
}

/** What an action came to, as far as it may have to be told. */
type Told =
  | { readonly kind: 'saved' }
  | { readonly kind: 'unsaved'; readonly why: StorageTrouble }
  | { readonly kind: 'refused'; readonly why: Refusal | ByTheRules };

/** Why an action did not do as asked, in words; null: it did. */
export function outcomeTrouble(outcome: Told): string | null {
  if (outcome.kind === 'saved') return null;
  if (outcome.kind === 'unsaved') return allWords.storage.why(outcome.why);
  if (outcome.why.kind === 'by the Rules') return byTheRules[outcome.why.why];
  const { kind } = outcome.why;
  if (kind === 'not valid') return roundWords.hole.notValid;
  return kind === 'gone' ? roundWords.gone : roundWords.undo['round open'];
}
