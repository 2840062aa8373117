import type { StorageTrouble } from '../logbook/storageTrouble.ts';

/** The record meant is not there (any more): deleted here or in another tab. */
export interface Gone {
  readonly kind: 'gone';
}

/** A value that no record may hold; `path` names its slot, for instance `carry.m`. */
export interface NotValid {
  readonly kind: 'not valid';
  readonly path: string;
}

/** Nothing was written, and trying again without a change would not help. */
export interface Refused<R> {
  readonly kind: 'refused';
  readonly why: R;
}

/**
 * What came of an action. `saved`: the transaction completed on the disk. `unsaved`: nothing was
 * written, and why the store did not take it.
 */
export type Outcome<T = undefined, R extends { readonly kind: string } = never> =
  | { readonly kind: 'saved'; readonly value: T }
  | { readonly kind: 'unsaved'; readonly why: StorageTrouble }
  | ([R] extends [never] ? never : Refused<R>);

/** What work on the logbook comes to before its transaction completes. */
export type Written<T, R> = { readonly kind: 'written'; readonly value: T } | Refused<R>;

/** Work that is done, with its answer. */
export function written<T>(value: T): { readonly kind: 'written'; readonly value: T } {
  return { kind: 'written', value };
}

/** Work that wrote nothing, and why. */
export function refuse<R>(why: R): Refused<R> {
  return { kind: 'refused', why };
}

/** The record meant is not there. */
export const gone: Refused<Gone> = refuse({ kind: 'gone' });
