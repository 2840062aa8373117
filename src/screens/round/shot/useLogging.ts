import { useSignal } from '@preact/signals';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { editShot } from '../../../actions/editShot.ts';
import type { Keeper } from '../../../actions/keeper.ts';
import { logShot } from '../../../actions/logShot.ts';
import { clearDraft, saveDraft } from '../../../actions/saveDraft.ts';
import { withUnsaved } from '../../../actions/withUnsaved.ts';
import type { Round } from '../../../golf/round.ts';
import type { Shot } from '../../../golf/shot.ts';
import { entryOf } from '../../../golf/shotEntry.ts';
import { inOrder, shotsOfHole } from '../../../golf/shotOrder.ts';
import { liveDraft, liveUndo } from '../../../logbook/live.ts';
import { shotWords } from '../../words/shot.ts';
import { asShot } from './asShot.ts';
import { draftOf, formOfDraft } from './shotDraft.ts';
import { editForm, reopened, type ShotForm } from './shotForm.ts';
import type { Asking } from './slots.ts';
import { takeBack } from './takeBack.ts';
import { rememberWay, wayKnown } from './wayKnown.ts';
import { whyRefused } from './whyRefused.ts';

interface Given {
  readonly keeper: Keeper;
  readonly round: Round;
  readonly shots: readonly Shot[];
  readonly hole: number;
  readonly editing: Shot | undefined;
  readonly asking: Asking;
  readonly onDone: () => void;
}

/** How a shot half entered is kept, logged and taken back. */
export interface Logging {
  /** Whether the stored draft has been read, so that nothing flashes by before it. */
  readonly isReady: boolean;
  /** The shots of the round with those that are not saved yet. */
  readonly shots: readonly Shot[];
  readonly isSaved: (shotId: string) => boolean;
  /** What the golfer has begun; null: nothing yet. */
  readonly form: ShotForm | null;
  /** The same at this very moment, for keys typed faster than the page is drawn. */
  readonly now: () => ShotForm | null;
  readonly status: string;
  readonly say: (status: string) => void;
  /** Keeps a change of the form; one that leaves nothing open logs a new shot. */
  readonly change: (form: ShotForm) => void;
  /** Gives up what was begun. */
  readonly drop: () => void;
  readonly finish: (form: ShotForm) => void;
  readonly undo: () => void;
}

/** Says with a short buzz that a shot is saved, on devices that can. */
function buzz(): void {
  navigator.vibrate?.(30);
}

/** The half-entered shot of one hole: kept on every change, logged durably, and taken back step by step. */
export function useLogging({ keeper, round, shots, hole, editing, asking, onDone }: Given): Logging {
  const touched = useSignal<ShotForm | null>(null);
  const isReady = useSignal(false);
  const status = useSignal('');
  /** Shots on their way to the store, and those just written that the live reading does not show yet. */
  const onTheWay = useSignal<readonly { readonly shot: Shot; readonly isSaved: boolean }[]>([]);
  const before = useRef<(ShotForm | null)[]>([]);
  const count = useRef(0);
  const draftQueue = useRef<Promise<unknown>>(Promise.resolve());

  const there = new Set(shots.map((shot) => shot.id));
  const coming = onTheWay.value.map(({ shot }) => shot).filter((shot) => !there.has(shot.id));
  const shown = inOrder(withUnsaved(keeper.unsaved.value, round.id, [...shots, ...coming]));

  useEffect(() => {
    const left = onTheWay.value.filter(({ shot }) => !shots.some((other) => other.id === shot.id));
    if (left.length < onTheWay.value.length) onTheWay.value = left;
  }, [shots, onTheWay]);

  const draft = liveDraft(keeper.connection).value;
  const undoable = liveUndo(keeper.connection).value;
  const lastDone = undoable.kind === 'ready' ? undoable.value : null;

  useLayoutEffect(() => {
    if (isReady.value || draft.kind === 'loading') return;
    const shotId = editing?.id ?? null;
    const logged = shotsOfHole(shown, hole).map((shot) => shot.number);
    const kept = draft.kind === 'ready' ? draft.value : null;
    const resumed = formOfDraft(kept, { roundId: round.id, hole, shotId, logged });
    touched.value = resumed ?? (editing ? editForm(editing.id, entryOf(editing), wayKnown(round), asking) : null);
    isReady.value = true;
  });

  function keep(form: ShotForm | null): void {
    touched.value = form;
    draftQueue.current = draftQueue.current.then(async () => {
      const outcome = await (form ? saveDraft(keeper, draftOf(form, round.id)) : clearDraft(keeper));
      if (outcome.kind !== 'saved' && form !== null) status.value = shotWords.status.draftNotKept;
    });
  }

  async function log(form: ShotForm): Promise<void> {
    count.current += 1;
    const coming = asShot(form.entry, round.id, `on-the-way-${count.current}`);
    onTheWay.value = [...onTheWay.value, { shot: coming, isSaved: false }];
    touched.value = null;
    before.current = [];
    status.value = '';
    rememberWay(form.by);
    const outcome = await logShot(keeper, round.id, form.entry);
    const others = onTheWay.value.filter(({ shot }) => shot !== coming);
    if (outcome.kind === 'saved') {
      onTheWay.value = [...others, { shot: outcome.value, isSaved: true }];
      if (touched.value === null) keep(null);
      status.value = shotWords.status.logged;
      buzz();
    } else {
      onTheWay.value = others;
      if (outcome.kind === 'refused') {
        status.value = whyRefused(outcome.why);
        touched.value = form;
      }
    }
  }

  async function edit(form: ShotForm, shot: Shot): Promise<void> {
    const outcome = await editShot(keeper, shot, form.entry);
    if (outcome.kind === 'refused') {
      status.value = whyRefused(outcome.why);
      return;
    }
    keep(null);
    if (outcome.kind === 'saved') buzz();
    onDone();
  }

  function finish(form: ShotForm): void {
    void (editing ? edit(form, editing) : log(form));
  }

  return {
    isReady: isReady.value,
    shots: shown,
    isSaved: (id) =>
      !keeper.unsaved.value.some((change) => change.shotId === id) &&
      !onTheWay.value.some(({ shot, isSaved }) => shot.id === id && !isSaved),
    form: touched.value,
    now: () => touched.peek(),
    status: status.value,
    say: (said) => {
      status.value = said;
    },
    change: (form) => {
      if (form.slot === null && form.shotId === null) return finish(form);
      before.current = [...before.current, touched.value];
      status.value = '';
      keep(form);
    },
    drop: () => {
      before.current = [];
      keep(null);
    },
    finish,
    undo: () => {
      const [last] = before.current.slice(-1);
      if (last !== undefined) {
        before.current = before.current.slice(0, -1);
        status.value = '';
        return keep(last);
      }
      if (touched.value !== null && !editing) return keep(null);
      void takeBack(keeper, round.id, lastDone, shown).then(({ said, entry }) => {
        status.value = said;
        onTheWay.value = onTheWay.value.filter(({ isSaved }) => !isSaved);
        if (entry && entry.hole === hole) {
          keep(reopened(entry, wayKnown(round)));
        }
      });
    },
  };
}
