import { useSignal } from '@preact/signals';
import { acceptProposal } from '../../actions/acceptProposal.ts';
import type { Logbook } from '../../golf/logbook.ts';
import { proposalOf, proposedRoundId } from '../../golf/proposal.ts';
import type { Review } from '../../golf/review.ts';
import { dayWithYear } from '../day.ts';
import press from '../parts/Press.module.css';
import { useKeeper } from '../useShelf.ts';
import { paperSheetWords as words } from '../words/paperSheet.ts';
import { words as allWords } from '../words.ts';
import css from './Team.module.css';

/** A paper sheet that a coach typed in, and the key that takes it over; nothing when the review brings none. */
export function ProposalKey({ review, logbook }: { readonly review: Review; readonly logbook: Logbook }) {
  const keeper = useKeeper();
  const trouble = useSignal('');
  const proposal = proposalOf(review);
  if (!proposal) return null;
  const isThere = logbook.rounds.some(({ id }) => id === proposedRoundId(review.id));
  const accept = async () => {
    const accepted = await acceptProposal(keeper, review.id);
    if (accepted.kind === 'unsaved') trouble.value = allWords.storage.why(accepted.why);
    else if (accepted.kind === 'refused') {
      trouble.value = accepted.why.kind === 'round by the Rules' ? words.byTheRules : words.refused;
    } else trouble.value = '';
  };
  return (
    <div class={css.keys}>
      <p>{words.proposes(proposal.shots.length, dayWithYear(proposal.date), proposal.course)}</p>
      {isThere ? (
        <p role="status">{words.accepted}</p>
      ) : (
        <button type="button" class={press.press} onClick={() => void accept()}>
          {words.accept}
        </button>
      )}
      {trouble.value && <p role="alert">{trouble.value}</p>}
    </div>
  );
}
