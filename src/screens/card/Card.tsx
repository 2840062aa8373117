import type { Route } from '../route.ts';
import { CardSheet } from './CardSheet.tsx';
import { ShotSheet } from './ShotSheet.tsx';

/** What goes to the course on paper: the card of numbers, and under `shots` the blank sheet to note shots on. */
export function Card({ path }: { readonly path: Route }) {
  return path[0] === 'shots' ? <ShotSheet /> : <CardSheet />;
}
