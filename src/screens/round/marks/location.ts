import { effect, type ReadonlySignal, signal } from '@preact/signals';
import { averagedFix, standingFixes } from '../../../golf/averagedFix.ts';
import type { Mark } from '../../../golf/mark.ts';
import { degrees } from '../../../units/degrees.ts';
import { metres } from '../../../units/metres.ts';

/** Where the phone says it is, or how far it has got with that. */
export type Location =
  /** Not asked: no round is open, the page is out of sight, or distance devices are not allowed. */
  | { readonly kind: 'off' }
  | { readonly kind: 'looking' }
  /** The mean of the fixes of the present stand. */
  | { readonly kind: 'fix'; readonly mark: Mark; readonly fixes: number; readonly isPoor: boolean }
  /** Asked for a while, and no fix came, or none any more. */
  | { readonly kind: 'no fix' }
  | { readonly kind: 'refused' }
  /** The browser has no location to give. */
  | { readonly kind: 'not offered' };

/** A radius beyond this is a poor fix, metres. Own choice: more than a club's difference. */
const POOR_M = 15;

/** So long without a fix, and there is none, milliseconds. */
const PATIENCE_MS = 30_000;

/** A receiver that says nothing for so long is asked once more, milliseconds: some repeat themselves only when moved. */
const ASK_AGAIN_MS = 8_000;

/** Fixes kept, at one a second longer than any stand counts. */
const MOST_FIXES = 60;

/** As much of the browser's Geolocation as is used. Heights are never read: they may not be known in a round by the Rules. */
export type Receiver = Pick<Geolocation, 'watchPosition' | 'clearWatch' | 'getCurrentPosition'>;

/** What the location is worked out from. */
export interface Outside {
  /** null: the browser has none. */
  readonly receiver: Receiver | null;
  /** Whether a fix is wanted and allowed. While it is false the receiver is not asked for anything. */
  readonly isWanted: ReadonlySignal<boolean>;
  readonly isVisible: ReadonlySignal<boolean>;
  readonly now: () => number;
}

const OPTIONS: PositionOptions = { enableHighAccuracy: true, maximumAge: 0, timeout: 20_000 };

/** Refused by the golfer or the phone; any other error passes. Source: W3C Geolocation, error codes. */
const REFUSED = 1;

/** Follows the phone's place while it is wanted and the page is in sight, and not a moment longer, for the battery's sake. */
export function followLocation({ receiver, isWanted, isVisible, now }: Outside): {
  readonly location: ReadonlySignal<Location>;
  readonly stop: () => void;
} {
  const location = signal<Location>({ kind: 'off' });

  function watch(sensor: Receiver): () => void {
    let fixes: Mark[] = [];
    let lastHeard = now();
    let isOver = false;
    location.value = { kind: 'looking' };

    const take = ({ coords }: GeolocationPosition) => {
      if (isOver) return;
      lastHeard = now();
      const fix: Mark = {
        lat_deg: degrees(coords.latitude),
        lon_deg: degrees(coords.longitude),
        accuracy_m: metres(coords.accuracy),
        at: new Date(lastHeard).toISOString(),
      };
      fixes = standingFixes([...fixes, fix].slice(-MOST_FIXES));
      const mark = averagedFix(fixes);
      location.value = { kind: 'fix', mark, fixes: fixes.length, isPoor: (mark.accuracy_m ?? 0) > POOR_M };
    };
    const stumble = (error: GeolocationPositionError) => {
      if (isOver || error.code !== REFUSED) return;
      end();
      location.value = { kind: 'refused' };
    };
    const watching = sensor.watchPosition(take, stumble, OPTIONS);
    const heart = setInterval(() => {
      const silence = now() - lastHeard;
      if (silence >= PATIENCE_MS) location.value = { kind: 'no fix' };
      if (silence >= ASK_AGAIN_MS) sensor.getCurrentPosition(take, stumble, OPTIONS);
    }, ASK_AGAIN_MS);
    const end = () => {
      if (isOver) return;
      isOver = true;
      clearInterval(heart);
      sensor.clearWatch(watching);
    };
    return end;
  }

  const stop = effect(() => {
    if (!isWanted.value || !isVisible.value) {
      location.value = { kind: 'off' };
      return undefined;
    }
    if (!receiver) {
      location.value = { kind: 'not offered' };
      return undefined;
    }
    return watch(receiver);
  });
  return { location, stop };
}
