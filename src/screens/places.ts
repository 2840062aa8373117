import type { ComponentType } from 'preact';
import type { Route } from './route.ts';
import { appWords } from './words/app.ts';

/** What a place is drawn by; `path` is the address after the place's own name. */
export type PlaceScreen = ComponentType<{ readonly path: Route }>;

/** A place of the app: its name in the address, its word in the bar, and how to fetch what is there. */
export interface Place {
  readonly id: string;
  readonly label: string;
  readonly load: () => Promise<PlaceScreen>;
}

/** Every place there is, in the order of the bar. The first is where the app begins. */
export const places: readonly Place[] = [
  { id: 'round', label: appWords.places.round, load: async () => (await import('./round/Round.tsx')).Round },
  {
    id: 'yardages',
    label: appWords.places.yardages,
    load: async () => (await import('./yardages/Yardages.tsx')).Yardages,
  },
  { id: 'bag', label: appWords.places.bag, load: async () => (await import('./bag/Bag.tsx')).Bag },
  { id: 'more', label: appWords.places.more, load: async () => (await import('./more/More.tsx')).More },
];

/** Where a new golfer begins, and where a file is opened to look at: places without a word in the bar. */
export const startPlace: Place = {
  id: 'start',
  label: appWords.app,
  load: async () => (await import('./start/StartPage.tsx')).StartPage,
};
export const openPlace: Place = {
  id: 'open',
  label: appWords.openTitle,
  load: async () => (await import('./more/OpenFile.tsx')).OpenFile,
};
