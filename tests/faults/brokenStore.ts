import { IDBDatabase, IDBFactory, IDBObjectStore } from 'fake-indexeddb';

/**
 * Ways a browser's store fails. `quota`: a put is refused; `quota at commit`: the puts went well and the
 * transaction is refused; `abort`: the browser gives a transaction up as it commits; `sleep`: a phone
 * slept and each transaction on the old connection throws; `server lost`: so does opening it anew;
 * `no answer`: the commit lands and its acknowledgement never reaches the page; `mute`: a request to open
 * is never answered.
 */
export const faults = ['quota', 'quota at commit', 'abort', 'sleep', 'server lost', 'no answer', 'mute'] as const;
export type Fault = (typeof faults)[number];

/** What the simulated store has beside what its types tell. */
interface Inner {
  _abort: (name: string) => void;
  _markFinished: () => void;
  dispatchEvent: (event: Event) => boolean;
}

let broken: { readonly fault: Fault; left: number } | null = null;

/** Breaks every simulated store of this process from now on, the next `times` times that it matters. */
export function breakStore(fault: Fault, times = Number.POSITIVE_INFINITY): void {
  broken = { fault, left: times };
}

/** Mends every store. */
export function mendStore(): void {
  broken = null;
}

/** Whether one of these faults strikes now; it is used up by that. */
function strikes(...candidates: readonly Fault[]): boolean {
  if (!broken || !candidates.includes(broken.fault) || broken.left <= 0) return false;
  broken.left -= 1;
  return true;
}

const lost = () => new DOMException('Connection to Indexed Database server lost', 'UnknownError');
const asleep = () => new DOMException('The database connection is closing', 'InvalidStateError');

// Wrapped once and for all: a connection keeps the functions it found when it was opened.
const { put } = IDBObjectStore.prototype;
const { transaction } = IDBDatabase.prototype;
const { open } = IDBFactory.prototype;

IDBObjectStore.prototype.put = function (...args) {
  if (strikes('quota')) throw new DOMException('no room left', 'QuotaExceededError');
  return put.apply(this, args);
};

IDBFactory.prototype.open = function (...args) {
  if (strikes('server lost')) throw lost();
  if (strikes('mute')) return {} as IDBOpenDBRequest;
  return open.apply(this, args);
};

IDBDatabase.prototype.transaction = function (...args) {
  // The simulated store itself upgrades through here.
  if ((args[1] as string) === 'versionchange') return transaction.apply(this, args);
  if (strikes('sleep')) throw asleep();
  if (strikes('server lost')) throw lost();
  const made = transaction.apply(this, args);
  const inner = made as unknown as Inner;
  if (made.mode !== 'readwrite') return made;
  if (strikes('no answer')) {
    const tell = inner.dispatchEvent;
    inner.dispatchEvent = function (event) {
      return event.type === 'complete' ? true : tell.call(this, event);
    };
  }
  const aborts = strikes('abort');
  if (aborts || strikes('quota at commit')) {
    const finish = inner._markFinished;
    inner._markFinished = function () {
      inner._markFinished = finish;
      this._abort(aborts ? 'AbortError' : 'QuotaExceededError');
    };
  }
  return made;
};
