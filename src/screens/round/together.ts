import type { Live } from '../../logbook/liveSignal.ts';

/** Two readings as one: both values once both are there, else the one that failed, else that one is awaited. */
export function together<A, B>(one: Live<A>, other: Live<B>): Live<readonly [A, B]> {
  if (one.kind === 'failed') return one;
  if (other.kind === 'failed') return other;
  if (one.kind === 'loading' || other.kind === 'loading') return { kind: 'loading' };
  return { kind: 'ready', value: [one.value, other.value] };
}
