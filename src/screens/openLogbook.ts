import { signal } from '@preact/signals';
import type { Logbook } from '../golf/logbook.ts';
import type { FrozenCard } from '../golf/shownLogbook.ts';

/** The logbook whose numbers are shown, and the moment that its book is reckoned for. */
export interface OpenLogbook {
  readonly logbook: Logbook;
  /** An instant; of a file, when it was exported, so that the report on the same file says the same. */
  readonly asOf: string;
  /** The card of the round by the Rules being played; null: the numbers follow the logbook. */
  readonly frozen: FrozenCard | null;
  /** Kept on this phone, or a file that is only looked at. */
  readonly from: 'phone' | 'file';
}

/** A file that is looked at without being kept; null: none. It stands before the logbook of the phone. */
export const lookedAt = signal<OpenLogbook | null>(null);

/** The logbook that is open; null: none yet. Everything shown in Yardages follows from it. */
export const openLogbook = signal<OpenLogbook | null>(null);
