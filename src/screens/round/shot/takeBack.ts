import type { Keeper } from '../../../actions/keeper.ts';
import { undo } from '../../../actions/undo.ts';
import type { Shot } from '../../../golf/shot.ts';
import { entryOf, type ShotEntry } from '../../../golf/shotEntry.ts';
import type { UndoEntry } from '../../../logbook/undoEntry.ts';
import { byTheRules } from '../../words/byTheRules.ts';
import { shotWords } from '../../words/shot.ts';

/** What came of taking back: a word for the golfer, and what a logged shot held, to be put right. */
export interface TakenBack {
  readonly said: string;
  readonly entry: ShotEntry | null;
}

const HERE: readonly UndoEntry['what'][] = ['log shot', 'edit shot', 'move shot', 'delete shot', 'set hole'];
const { status } = shotWords;

function isOfRound(entry: UndoEntry | null, roundId: string): boolean {
  if (entry === null || !HERE.includes(entry.what)) return false;
  return entry.images.some((image) => (image.of === 'shot' ? image.roundId : image.id) === roundId);
}

/**
 * Takes back the last thing done in this round, and nothing done elsewhere in the app. A shot that was
 * logged comes back as the entry it was.
 *
 * @param last what would be taken back from the store.
 * @param shots shots of the round with those not saved yet.
 */
export async function takeBack(
  keeper: Keeper,
  roundId: string,
  last: UndoEntry | null,
  shots: readonly Shot[],
): Promise<TakenBack> {
  const waiting = keeper.unsaved.peek().at(-1);
  if (waiting ? waiting.roundId !== roundId : !isOfRound(last, roundId)) {
    return { said: status.nothingToUndo, entry: null };
  }
  const image = last?.images.find((image) => image.of === 'shot');
  const shotId = waiting ? (waiting.what === 'log' ? waiting.shotId : null) : (image?.id ?? null);
  const isLog = waiting ? waiting.what === 'log' : last?.what === 'log shot';
  const shot = shots.find((shot) => shot.id === shotId);
  const outcome = await undo(keeper);
  if (outcome.kind === 'unsaved') return { said: status.notUndone, entry: null };
  if (outcome.kind === 'refused') {
    if (outcome.why.kind === 'by the Rules') return { said: byTheRules[outcome.why.why], entry: null };
    const isGone = outcome.why.kind === 'nothing to undo';
    return { said: isGone ? status.nothingToUndo : status.changedSince, entry: null };
  }
  return { said: status.undone, entry: isLog && shot ? entryOf(shot) : null };
}
