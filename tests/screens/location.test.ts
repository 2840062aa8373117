import { signal } from '@preact/signals';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { followLocation, type Receiver } from '../../src/screens/round/marks/location.ts';
import { locationWords } from '../../src/screens/round/marks/locationWords.ts';

let clock = 0;
beforeEach(() => {
  clock = Date.UTC(2026, 4, 2, 9);
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

function passes(ms: number): void {
  for (let gone = 0; gone < ms; gone += 1000) {
    clock += 1000;
    vi.advanceTimersByTime(1000);
  }
}

/** A receiver that counts what it is asked, gives fixes on command, and throws when a height is read. */
function receiver() {
  const calls = { watch: 0, clear: 0, once: 0 };
  let give: PositionCallback | undefined;
  let fail: PositionErrorCallback | null | undefined;
  const sensor: Receiver = {
    watchPosition: (success, error) => {
      calls.watch += 1;
      give = success;
      fail = error;
      return calls.watch;
    },
    clearWatch: () => {
      calls.clear += 1;
    },
    getCurrentPosition: () => {
      calls.once += 1;
    },
  };
  const fix = (latitude: number, longitude: number, accuracy: number) =>
    give?.({
      timestamp: clock,
      coords: {
        latitude,
        longitude,
        accuracy,
        get altitude(): number {
          throw new Error('the height was read');
        },
      },
    } as unknown as GeolocationPosition);
  const error = (code: number) => fail?.({ code } as GeolocationPositionError);
  return { sensor, calls, fix, error };
}

function followed(given: Receiver | null, wanted = true) {
  const isWanted = signal(wanted);
  const isVisible = signal(true);
  const { location, stop } = followLocation({ receiver: given, isWanted, isVisible, now: () => clock });
  return { isWanted, isVisible, location, stop };
}

test('nothing is asked of the receiver while no fix is wanted', () => {
  const phone = receiver();
  const { location } = followed(phone.sensor, false);
  passes(120_000);
  expect(phone.calls).toEqual({ watch: 0, clear: 0, once: 0 });
  expect(location.value.kind).toBe('off');
});

test('fixes of one stand are averaged, and the height is never read', () => {
  const phone = receiver();
  const { location } = followed(phone.sensor);
  expect(location.value.kind).toBe('looking');
  phone.fix(51.2, -1.1, 6);
  passes(1000);
  phone.fix(51.20001, -1.1, 6);
  const found = location.value;
  if (found.kind !== 'fix') throw new Error('no fix');
  expect(found.fixes).toBe(2);
  expect(found.mark.lat_deg).toBeCloseTo(51.200005, 7);
  expect(found.isPoor).toBe(false);
});

test('an error that passes is outlived, a refusal ends the watch', () => {
  const phone = receiver();
  const { location } = followed(phone.sensor);
  phone.error(2);
  expect(location.value.kind).toBe('looking');
  phone.fix(51.2, -1.1, 6);
  phone.error(3);
  phone.error(2);
  expect(location.value.kind).toBe('fix');
  phone.error(1);
  expect(location.value.kind).toBe('refused');
  expect(phone.calls.clear).toBe(1);
  passes(60_000);
  expect(phone.calls.once).toBe(0);
});

test('after half a minute of silence there is no fix, and the receiver is asked again until one comes', () => {
  const phone = receiver();
  const { location } = followed(phone.sensor);
  passes(40_000);
  expect(location.value.kind).toBe('no fix');
  expect(phone.calls.once).toBeGreaterThan(2);
  phone.fix(51.2, -1.1, 6);
  expect(location.value.kind).toBe('fix');
});

test('out of sight, unwanted or stopped, the watch ends, and comes back with the page', () => {
  const phone = receiver();
  const { isVisible, isWanted, location, stop } = followed(phone.sensor);
  isVisible.value = false;
  expect(phone.calls).toMatchObject({ watch: 1, clear: 1 });
  expect(location.value.kind).toBe('off');
  phone.fix(51.2, -1.1, 6);
  expect(location.value.kind).toBe('off');
  isVisible.value = true;
  expect(phone.calls.watch).toBe(2);
  isWanted.value = false;
  expect(phone.calls.clear).toBe(2);
  isWanted.value = true;
  stop();
  expect(phone.calls.clear).toBe(3);
});

test('each way of having no good fix says what to do instead', () => {
  const phone = receiver();
  const { location } = followed(phone.sensor);
  phone.fix(51.2, -1.1, 22);
  expect(location.value).toMatchObject({ kind: 'fix', isPoor: true });
  expect(locationWords(location.value, 'yards')).toContain('24\u00a0yd');
  expect(locationWords(location.value, 'yards')).toContain('pace');
  expect(followed(null).location.value.kind).toBe('not offered');
  for (const kind of ['refused', 'not offered'] as const) expect(locationWords({ kind }, 'yards')).toMatch(/pace/i);
  expect(locationWords({ kind: 'no fix' }, 'yards')).toContain('without a mark');
});
