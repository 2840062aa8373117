import type { ByTheRules } from '../../../actions/heldBack.ts';
import type { Gone, NotValid } from '../../../actions/outcome.ts';
import { byTheRules } from '../../words/byTheRules.ts';
import { shotWords } from '../../words/shot.ts';

/** Why a shot or a hole was not taken as entered, in words. */
export function whyRefused(why: Gone | NotValid | ByTheRules): string {
  if (why.kind === 'by the Rules') return byTheRules[why.why];
  return why.kind === 'gone' ? shotWords.status.gone : shotWords.status.notValid(why.path);
}
