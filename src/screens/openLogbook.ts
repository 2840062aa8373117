import { signal } from '@preact/signals';
import type { Logbook } from '../golf/logbook.ts';

/** The logbook whose numbers are shown, and the moment that its book is reckoned for. */
export interface OpenLogbook {
  readonly logbook: Logbook;
  /** An instant; of a file, when it was exported, so that the report on the same file says the same. */
  readonly asOf: string;
}

/** The logbook that is open; null: none. Everything shown follows from it. */
export const openLogbook = signal<OpenLogbook | null>(null);
