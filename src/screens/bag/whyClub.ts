import type { ByTheRules } from '../../actions/heldBack.ts';
import type { Gone, NotValid } from '../../actions/outcome.ts';
import { bagWords } from '../words/bag.ts';
import { byTheRules } from '../words/byTheRules.ts';

/** Why a change of a club was not taken, in words. */
export function whyClub(why: Gone | NotValid | ByTheRules): string {
  if (why.kind === 'by the Rules') return byTheRules[why.why];
  return why.kind === 'gone' ? bagWords.gone : bagWords.club.notValid(why.path);
}
