import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Keeper } from '../actions/keeper.ts';
import type { Shelf } from '../actions/shelf.ts';

const ShelfContext = createContext<Shelf | null>(null);

/** Hands the page's one shelf to every screen under it. */
export const ShelfProvider = ShelfContext.Provider;

/** The shelf that the page was given: the golfer's own logbook and the demo's. */
export function useShelf(): Shelf {
  const shelf = useContext(ShelfContext);
  if (!shelf) throw new RangeError('a screen was drawn outside the page: it has no shelf');
  return shelf;
}

/** The keeper of the logbook on the screen: read from it, and write through it. */
export function useKeeper(): Keeper {
  return useShelf().shown.value;
}
