import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Keeper } from '../../../actions/keeper.ts';
import { clearDraft, saveDraft } from '../../../actions/saveDraft.ts';
import { type HoleChanges, setHole } from '../../../actions/setHole.ts';
import type { Hole, Putt } from '../../../golf/hole.ts';
import { blankHole } from '../../../golf/newRound.ts';
import { puttsByCount } from '../../../golf/putts.ts';
import type { Round } from '../../../golf/round.ts';
import { blankEntry } from '../../../golf/shotEntry.ts';
import { liveDraft } from '../../../logbook/live.ts';
import type { DistanceUnit } from '../../distance.ts';
import { shotWords } from '../../words/shot.ts';
import { puttLength } from './puttLength.ts';
import { whyRefused } from './whyRefused.ts';

/** Name of the putt's length in the stored draft. */
const SLOT = 'putt';

/** The hole as it will be, and how putts and its end are written on it. */
export interface Putts {
  readonly hole: Hole;
  readonly isSaved: boolean;
  /** The length chosen for the putt in hand, as spoken; null: none. */
  readonly length: number | null;
  readonly choose: (figure: number | null) => void;
  /** So many more putts, the last one holed. */
  readonly holed: (count: number) => void;
  readonly missed: () => void;
  readonly end: (result: 'picked up' | 'conceded') => void;
}

/** The putts of one hole: kept as they are noted, and shown before the store has taken them. */
export function usePutts(
  keeper: Keeper,
  round: Round,
  number: number,
  putterId: string | null,
  unit: DistanceUnit,
  say: (status: string) => void,
): Putts {
  /** What was written and is not shown by the live reading yet. */
  const written = useSignal<{ readonly changes: HoleChanges; readonly isUnsaved: boolean } | null>(null);
  const draft = liveDraft(keeper.connection).value;
  const kept = draft.kind === 'ready' ? draft.value : null;
  const isHere = kept?.slot === SLOT && kept.roundId === round.id && kept.hole === number;
  const length = useSignal<number | null | undefined>(undefined);

  useEffect(() => {
    if (written.value && !written.value.isUnsaved) written.value = null;
  }, [round, written]);

  const waits = keeper.unsaved.value.some((change) => change.what === 'hole' && change.roundId === round.id);
  const over = written.value && (!written.value.isUnsaved || waits) ? written.value.changes : {};
  const hole = { ...(round.holes.find((hole) => hole.number === number) ?? blankHole(number)), ...over };

  async function write(changes: HoleChanges): Promise<void> {
    written.value = { changes, isUnsaved: false };
    length.value = null;
    const outcome = await setHole(keeper, round.id, number, changes);
    if (outcome.kind === 'saved') {
      await clearDraft(keeper);
      navigator.vibrate?.(30);
    } else if (outcome.kind === 'unsaved') {
      written.value = { changes, isUnsaved: true };
      say(shotWords.status.puttsFirst);
    } else {
      written.value = null;
      say(whyRefused(outcome.why));
    }
  }

  const spoken = length.value === undefined ? (isHere ? Number(kept.typed) : null) : length.value;
  const length_m = spoken === null ? null : puttLength(spoken, unit);
  const putt = (holed: boolean): Putt => ({ clubId: putterId, length_m, holed });

  return {
    hole,
    isSaved: !waits,
    length: spoken,
    choose: (figure) => {
      length.value = figure;
      const entry = blankEntry(number, 1);
      const typed = figure === null ? '' : String(figure);
      void (figure === null
        ? clearDraft(keeper)
        : saveDraft(keeper, { roundId: round.id, hole: number, shotId: null, slot: SLOT, typed, entry }));
    },
    holed: (count) => {
      const more = puttsByCount(count, putterId);
      const first = more[0];
      void write({ putts: [...hole.putts, { ...first, length_m }, ...more.slice(1)] });
    },
    missed: () => void write({ putts: [...hole.putts, putt(false)] }),
    end: (result) => void write({ result }),
  };
}
