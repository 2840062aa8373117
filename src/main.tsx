import { render } from 'preact';
import { openShelf } from './actions/shelf.ts';
import { App } from './screens/App.tsx';
import { updater, updateState } from './screens/appUpdate.ts';
import { followShelf } from './screens/followShelf.ts';
import { followInstalling } from './screens/installing.ts';
import { followLogbook } from './screens/openBook.ts';
import { fetchPlaces } from './screens/parts/PlaceOnScreen.tsx';
import { followAddress } from './screens/route.ts';
import './screens/theme.css';
import { followTheme } from './screens/theme.ts';
import { ShelfProvider } from './screens/useShelf.ts';
import { trustedScriptUrl } from './worker/trustedScriptUrl.ts';

/**
 * Keeps the app for use without a signal. A newer version is fetched beside the present one and waits;
 * only the golfer's tap puts it in place and loads the page again.
 */
async function keepForOffline(): Promise<void> {
  if (!navigator.serviceWorker || import.meta.env.DEV) return;
  const { Workbox } = await import('workbox-window');
  const workbox = new Workbox(trustedScriptUrl('./sw.js'));
  let isTaken = false;
  workbox.addEventListener('waiting', () => {
    updateState.value = { kind: 'waiting' };
  });
  workbox.addEventListener('controlling', (event) => {
    if (isTaken) location.reload();
    else if (event.isUpdate) updateState.value = { kind: 'elsewhere' };
  });
  updateState.value = { kind: 'none' };
  await workbox.register({ immediate: true });
  updater.value = {
    check: async () => {
      updateState.value = { kind: 'checking' };
      try {
        await workbox.update();
        // A version that is found tells of itself once it waits.
        if (updateState.peek().kind === 'checking') updateState.value = { kind: 'none' };
      } catch (error) {
        console.error('no new version could be looked for', error);
        updateState.value = { kind: 'failed' };
      }
    },
    apply: () => {
      isTaken = true;
      workbox.messageSkipWaiting();
    },
  };
}

/** Empties the bin of what has been in it for long; fetched after the first page is there. */
async function emptyOldBin(): Promise<void> {
  const { purgeBin } = await import('./actions/restoreFromBin.ts');
  await purgeBin(shelf.own);
}

const app = document.getElementById('app');
if (!app) throw new Error('the page has no element with the id app');
const shelf = openShelf();
followTheme();
followAddress();
followInstalling();
followShelf(shelf);
followLogbook();
render(
  <ShelfProvider value={shelf}>
    <App />
  </ShelfProvider>,
  app,
);
void fetchPlaces();
emptyOldBin().catch((error: unknown) => console.error('the bin cannot be emptied', error));
keepForOffline().catch((error: unknown) => console.error('nothing can be kept for offline use here', error));
