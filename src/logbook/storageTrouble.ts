/** Why the store did not do as asked, as far as it can be told apart by what the golfer can do about it. */
export type StorageTrouble =
  /** The phone has no room left for this site. */
  | { readonly kind: 'quota' }
  /** Another tab holds the logbook in its old form. */
  | { readonly kind: 'blocked upgrade' }
  /** The logbook was written by a newer version of the app than this one. */
  | { readonly kind: 'newer version' }
  /** The browser lost the logbook under us, and again after it was opened anew. */
  | { readonly kind: 'connection lost' }
  /** The browser gives this page no storage (some private windows). */
  | { readonly kind: 'no storage' }
  | { readonly kind: 'failed'; readonly reason: string };

/** What came of asking the store: the answer, or why there is none. */
export type Stored<T> = { readonly kind: 'ok'; readonly value: T } | StorageTrouble;

const LOST = ['InvalidStateError', 'DatabaseClosedError', 'UnknownError', 'AbortError', 'TransactionInactiveError'];
const NO_STORAGE = ['MissingAPIError', 'SecurityError', 'InvalidStateError', 'NotSupportedError'];

/** Names of an error and of those it wraps, outermost first. */
function errorNames(error: unknown): string[] {
  const names: string[] = [];
  let at: unknown = error;
  for (let depth = 0; depth < 5 && typeof at === 'object' && at !== null; depth += 1) {
    const { name, inner, failures } = at as { name?: unknown; inner?: unknown; failures?: unknown };
    if (typeof name === 'string') names.push(name);
    at = inner ?? (Array.isArray(failures) ? failures[0] : undefined);
  }
  return names;
}

/**
 * Names the trouble behind an error of the store. What an abort wraps counts before the abort; the
 * same error name means another thing while opening than later on.
 */
export function storageTrouble(error: unknown, during: 'opening' | 'work'): StorageTrouble {
  const names = errorNames(error);
  if (names.includes('QuotaExceededError')) return { kind: 'quota' };
  if (names.includes('VersionError')) return { kind: 'newer version' };
  if (during === 'opening' && names.some((name) => NO_STORAGE.includes(name))) return { kind: 'no storage' };
  if (names.some((name) => LOST.includes(name))) return { kind: 'connection lost' };
  return { kind: 'failed', reason: error instanceof Error ? error.message : String(error) };
}
