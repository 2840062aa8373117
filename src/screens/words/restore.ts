import type { RestoreRefusal } from '../../actions/restoreBackup.ts';
import { refusalSentence } from '../../exchange/refusal.ts';

/** Why a backup was not restored, in words; nothing was written then. */
function why(refusal: RestoreRefusal): string {
  switch (refusal.kind) {
    case 'unreadable':
      return refusal.refusals.map(refusalSentence).join('; ');
    case 'share':
      return 'This file was made to be shared and leaves things out, so it is no backup. It can be looked at.';
    case 'another player':
      return `This is the logbook of ${refusal.name || 'another golfer'}. Two golfers’ logbooks are never merged; it can replace the one here, or be looked at.`;
    case 'round by the Rules':
      return 'Nothing is brought in while a round by the Rules is being played. Close the round first.';
  }
}

/** Every text about bringing a backup back. */
export const restoreWords = { why } as const;
