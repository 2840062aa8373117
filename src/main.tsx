import { render } from 'preact';
import { App } from './screens/App.tsx';
import { followLogbook } from './screens/openBook.ts';
import { followAddress } from './screens/route.ts';
import './screens/theme.css';
import { followTheme } from './screens/theme.ts';

const app = document.getElementById('app');
if (!app) throw new Error('the page has no element with the id app');
followTheme();
followAddress();
followLogbook();
render(<App />, app);
