import { signal } from '@preact/signals';

/** The parts of the address after `#/`: `['yardages', 'c7', 'full']`. */
export type Route = readonly string[];

function parse(hash: string): Route {
  return hash
    .replace(/^#\/?/, '')
    .split('/')
    .filter((part) => part !== '');
}

/** Where the app is. Ids and swing lengths are safe in an address as they stand, so nothing is escaped. */
export const route = signal<Route>(parse(location.hash));

/** The address of a place inside the app. */
export function addressOf(...parts: Route): string {
  return `#/${parts.join('/')}`;
}

const scrolledTo = new Map<string, number>();
let address = location.hash;
let steps = stepOf(history.state);

/** How many steps into the app this history entry is; a fresh entry has none written in it. */
function stepOf(state: unknown): number {
  const step = (state as { step?: unknown } | null)?.step;
  return typeof step === 'number' ? step : 0;
}

/** Where on the page the place at this address was left; the top when it was not seen yet. */
export function leftAt(hash: string): number {
  return scrolledTo.get(hash) ?? 0;
}

/** Goes to a place inside the app as a link would. */
export function goTo(...parts: Route): void {
  location.hash = addressOf(...parts);
}

function arrive(): void {
  address = location.hash;
  route.value = parse(location.hash);
}

/** Goes to a place in the stead of the present one, which no way leads back to. */
export function replaceWith(...parts: Route): void {
  history.replaceState({ step: steps }, '', addressOf(...parts));
  arrive();
}

/** Goes back as the browser would; from an address opened directly, to the place given instead. */
export function goBack(...otherwise: Route): void {
  if (steps > 0) history.back();
  else replaceWith(...otherwise);
}

/** Starts to follow the address. Called once, by the page. */
export function followAddress(): void {
  history.scrollRestoration = 'manual';
  addEventListener('scroll', () => scrolledTo.set(address, scrollY), { passive: true });
  addEventListener('hashchange', () => {
    if (history.state === null) {
      steps += 1;
      history.replaceState({ step: steps }, '');
    } else {
      steps = stepOf(history.state);
    }
    arrive();
  });
}
