import { createClient } from './client.ts';
import entryUrl from './entry.ts?worker&url';
import { trustedScriptUrl } from './trustedScriptUrl.ts';

/** The app's one computing worker: every number is reckoned there, never on the thread that draws. */
export const compute = createClient(() => new Worker(trustedScriptUrl(entryUrl), { type: 'module' }));

/** Names the version of everything that is reckoned: the same mark, the same numbers from the same book. */
export const workerMark: string = entryUrl.slice(entryUrl.lastIndexOf('/') + 1);
