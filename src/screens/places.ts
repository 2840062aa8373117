import type { ComponentType } from 'preact';
import type { Route } from './route.ts';
import { words } from './words.ts';
import { Yardages } from './yardages/Yardages.tsx';

/** A place of the app: its name in the address, its word in the bar, and what is there. */
export interface Place {
  readonly id: string;
  readonly label: string;
  /** What is shown; `path` is the address after the place's own name. */
  readonly Screen: ComponentType<{ readonly path: Route }>;
}

/** Every place there is, in the order of the bar. The first is where the app begins. */
export const places: readonly Place[] = [{ id: 'yardages', label: words.places.yardages, Screen: Yardages }];
