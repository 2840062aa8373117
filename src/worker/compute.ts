import { createClient } from './client.ts';
import entryUrl from './entry.ts?worker&url';
import { trustedScriptUrl } from './trustedScriptUrl.ts';

/** The app's one computing worker: every number is reckoned there, never on the thread that draws. */
export const compute = createClient(() => new Worker(trustedScriptUrl(entryUrl), { type: 'module' }));
