import { signal } from '@preact/signals';

/** Whether a newer version of the app is there to be taken. */
export type UpdateState =
  /** Nothing is kept for offline use here, so nothing is updated either. */
  | { readonly kind: 'not offered' }
  | { readonly kind: 'none' }
  | { readonly kind: 'checking' }
  | { readonly kind: 'failed' }
  | { readonly kind: 'waiting' }
  /** Another tab has taken it; this one still runs the old version from memory. */
  | { readonly kind: 'elsewhere' };

/** How far it is known whether there is a newer version. */
export const updateState = signal<UpdateState>({ kind: 'not offered' });

/** What can be done about it. */
export interface Updater {
  /** Asks the app's own address for a newer version. */
  readonly check: () => Promise<void>;
  /** Takes the one that waits and loads the page again. */
  readonly apply: () => void;
}

/** The way to newer versions; null while there is none. */
export const updater = signal<Updater | null>(null);

/** Whether the golfer wants to hear of the waiting version later. */
export const isPutOff = signal(false);
