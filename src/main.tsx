import { render } from 'preact';
import { openShelf } from './actions/shelf.ts';
import { App } from './screens/App.tsx';
import { followShelf } from './screens/followShelf.ts';
import { followLogbook } from './screens/openBook.ts';
import { fetchPlaces } from './screens/parts/PlaceOnScreen.tsx';
import { followAddress } from './screens/route.ts';
import './screens/theme.css';
import { followTheme } from './screens/theme.ts';
import { ShelfProvider } from './screens/useShelf.ts';

const app = document.getElementById('app');
if (!app) throw new Error('the page has no element with the id app');
const shelf = openShelf();
followTheme();
followAddress();
followShelf(shelf);
followLogbook();
render(
  <ShelfProvider value={shelf}>
    <App />
  </ShelfProvider>,
  app,
);
void fetchPlaces();
