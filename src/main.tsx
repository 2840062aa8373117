import { render } from 'preact';
import { openShelf } from './actions/shelf.ts';
import { App } from './screens/App.tsx';
import { updater, updateState } from './screens/appUpdate.ts';
import { followShelf } from './screens/followShelf.ts';
import { followInstalling } from './screens/installing.ts';
import { followLogbook } from './screens/openBook.ts';
import { fetchPlaces } from './screens/parts/PlaceOnScreen.tsx';
import { followQuiet } from './screens/quiet.ts';
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
  let isControlled = navigator.serviceWorker.controller !== null;
  workbox.addEventListener('controlling', () => {
    if (isTaken) location.reload();
    else if (isControlled) updateState.value = { kind: 'elsewhere' };
    isControlled = true;
  });
  updateState.value = { kind: 'none' };
  const registration = await workbox.register({ immediate: true });
  if (!registration) return;
  // Workbox tells only of the first new version of a visit; a phone may keep the page open for weeks.
  const look = () => {
    if (registration.waiting && isControlled) updateState.value = { kind: 'waiting' };
    else if (updateState.peek().kind === 'checking' && !registration.installing) updateState.value = { kind: 'none' };
  };
  registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', look));
  look();
  updater.value = {
    check: async () => {
      updateState.value = { kind: 'checking' };
      try {
        await registration.update();
        look();
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
followQuiet();
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
