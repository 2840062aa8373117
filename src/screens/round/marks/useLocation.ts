import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { permissions } from '../../../golf/permissions.ts';
import type { Round } from '../../../golf/round.ts';
import { followLocation, type Location } from './location.ts';

/** So long after the last page that wanted a fix is left, the receiver stays on: coming back then needs no new search. */
const LINGER_MS = 60_000;

/** Pages on screen, or left a moment ago, that show where the phone is. */
const lookers = signal(0);
/** Whether the golfer has asked for marks: by a tap now, or by having allowed the place to this page before. */
const isAsked = signal(false);
const isVisible = signal(document.visibilityState === 'visible');
const isWanted = computed(() => lookers.value > 0 && isAsked.value);

let location: ReadonlySignal<Location> | undefined;

/** The phone is not asked for leave without a tap; where it was given before, the search may start at once. */
async function askIfAllowedBefore(): Promise<void> {
  if (!('permissions' in navigator)) return;
  try {
    const { state } = await navigator.permissions.query({ name: 'geolocation' });
    if (state === 'granted') isAsked.value = true;
  } catch (error) {
    // Some browsers do not answer for the location; then the first tap asks.
    console.error('whether the place may be known is not told', error);
  }
}

/** Starts on first use: a page that never needs the place never touches the receiver. */
function followed(): ReadonlySignal<Location> {
  if (!location) {
    document.addEventListener('visibilitychange', () => {
      isVisible.value = document.visibilityState === 'visible';
    });
    void askIfAllowedBefore();
    const receiver = 'geolocation' in navigator ? navigator.geolocation : null;
    location = followLocation({ receiver, isWanted, isVisible, now: () => Date.now() }).location;
  }
  return location;
}

/** Starts the search for the place; for a golfer's tap. */
export function askForLocation(): void {
  isAsked.value = true;
}

/**
 * Where the phone is while this round is played; `off` until marks were asked for, and where distance devices are not
 * allowed: then the receiver is not asked for anything.
 */
export function useLocation(round: Round): Location {
  const isAllowed = permissions(round).locating;
  useEffect(() => {
    if (!isAllowed) return undefined;
    lookers.value += 1;
    return () => {
      setTimeout(() => {
        lookers.value -= 1;
      }, LINGER_MS);
    };
  }, [isAllowed]);
  return isAllowed ? followed().value : { kind: 'off' };
}
