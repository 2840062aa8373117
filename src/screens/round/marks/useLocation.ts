import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { permissions } from '../../../golf/permissions.ts';
import type { Round } from '../../../golf/round.ts';
import { followLocation, type Location } from './location.ts';

/** So long after the last page that wanted a fix is left, the receiver stays on: coming back then needs no new search. */
const LINGER_MS = 60_000;

const asking = signal(0);
const isVisible = signal(document.visibilityState === 'visible');
const isWanted = computed(() => asking.value > 0);

let location: ReadonlySignal<Location> | undefined;

/** Starts on first use: a page that never needs the place never touches the receiver. */
function followed(): ReadonlySignal<Location> {
  if (!location) {
    document.addEventListener('visibilitychange', () => {
      isVisible.value = document.visibilityState === 'visible';
    });
    const receiver = 'geolocation' in navigator ? navigator.geolocation : null;
    location = followLocation({ receiver, isWanted, isVisible, now: () => Date.now() }).location;
  }
  return location;
}

/**
 * Where the phone is while this round is played; `off` while it is not, and where distance devices are not allowed:
 * then the receiver is not asked for anything.
 */
export function useLocation(round: Round): Location {
  const isAllowed = permissions(round).locating;
  useEffect(() => {
    if (!isAllowed) return undefined;
    asking.value += 1;
    return () => {
      setTimeout(() => {
        asking.value -= 1;
      }, LINGER_MS);
    };
  }, [isAllowed]);
  return isAllowed ? followed().value : { kind: 'off' };
}
