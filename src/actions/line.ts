import type { Signal } from '@preact/signals';
import type { Shot } from '../golf/shot.ts';
import type { StorageTrouble } from '../logbook/storageTrouble.ts';
import type { Outcome } from './outcome.ts';

/** What kind of change waits to be saved. */
export type UnsavedWhat = 'log' | 'edit' | 'move' | 'delete' | 'hole';

/** A change kept in memory because the store did not take it. */
export interface Unsaved {
  readonly id: string;
  readonly what: UnsavedWhat;
  readonly roundId: string;
  /** The shot it is about; null: a hole. */
  readonly shotId: string | null;
  readonly why: StorageTrouble;
  /** The shots of the round as they will be once it is saved. */
  readonly apply: (shots: readonly Shot[]) => readonly Shot[];
}

/** A change that must not be lost: what it is, and how it is written. Writing it twice is as good as once. */
export interface Change<T, R extends { readonly kind: string }> extends Omit<Unsaved, 'why'> {
  readonly run: () => Promise<Outcome<T, R>>;
}

/** The line in which changes are written one after the other, and wait when the store does not take them. */
export interface Line {
  /** Writes a change after those before it; kept and tried again when the store does not take it. */
  readonly add: <T, R extends { readonly kind: string }>(change: Change<T, R>) => Promise<Outcome<T, R>>;
  /** Does other work after all that is in the line, having tried what waits. */
  readonly after: <T>(work: () => Promise<T>) => Promise<T>;
  /** Tries what waits; true when nothing waits any more. */
  readonly retry: () => Promise<boolean>;
  /** Gives up the change that joined last; undefined when none waits. */
  readonly giveUpLast: () => Unsaved | undefined;
  /** Gives up all that waits. */
  readonly giveUpAll: () => void;
  readonly close: () => void;
}

interface Waiting {
  readonly shown: Unsaved;
  readonly run: () => Promise<{ readonly kind: string; readonly why?: unknown }>;
}

/** Opens the line. `unsaved` shows what waits; it is tried again every `retryEvery_ms` milliseconds. */
export function openLine(unsaved: Signal<readonly Unsaved[]>, retryEvery_ms: number): Line {
  let waiting: Waiting[] = [];
  let last: Promise<unknown> = Promise.resolve();
  let timer: ReturnType<typeof setTimeout> | undefined;
  let closed = false;

  function show(next: Waiting[]) {
    waiting = next;
    unsaved.value = next.map(({ shown }) => shown);
    clearTimeout(timer);
    if (next.length > 0 && !closed) timer = setTimeout(() => void retry(), retryEvery_ms);
  }

  /** Runs when all before it has run. */
  function inTurn<T>(work: () => Promise<T>): Promise<T> {
    const turn = last.then(work, work);
    last = turn;
    return turn;
  }

  /** Tries what waits, in order; a change whose own content fails holds up only the changes of its shot. */
  async function tryWaiting(): Promise<void> {
    const held = new Set<string>();
    for (const each of [...waiting]) {
      const about = each.shown.shotId ?? each.shown.roundId;
      if (held.has(about)) continue;
      const outcome = await each.run();
      if (outcome.kind !== 'unsaved') {
        show(waiting.filter((other) => other !== each));
        continue;
      }
      const why = outcome.why as StorageTrouble;
      show(waiting.map((other) => (other === each ? { ...each, shown: { ...each.shown, why } } : other)));
      if (why.kind !== 'failed') return;
      held.add(about);
    }
  }

  /** Why a new change cannot be written now: what waits before it must come first. */
  function heldUpBy(change: { readonly shotId: string | null; readonly roundId: string }): StorageTrouble | undefined {
    const about = change.shotId ?? change.roundId;
    const before = waiting.find(
      ({ shown }) => shown.why.kind !== 'failed' || (shown.shotId ?? shown.roundId) === about,
    );
    return before?.shown.why;
  }

  async function write<T, R extends { readonly kind: string }>(change: Change<T, R>): Promise<Outcome<T, R>> {
    await tryWaiting();
    const before = heldUpBy(change);
    const outcome = before ? ({ kind: 'unsaved', why: before } as const) : await change.run();
    if (outcome.kind === 'unsaved') {
      const { run, ...about } = change;
      show([...waiting, { shown: { ...about, why: outcome.why }, run }]);
    }
    return outcome;
  }

  function retry(): Promise<boolean> {
    return inTurn(async () => {
      await tryWaiting();
      return waiting.length === 0;
    });
  }

  return {
    add: (change) => inTurn(() => write(change)),
    after: (work) =>
      inTurn(async () => {
        await tryWaiting();
        return work();
      }),
    retry,
    giveUpLast: () => {
      const given = waiting.at(-1);
      if (given) show(waiting.slice(0, -1));
      return given?.shown;
    },
    giveUpAll: () => show([]),
    close: () => {
      closed = true;
      clearTimeout(timer);
    },
  };
}
