import { type Reading, type Refusal, refusalSentence } from '../../src/exchange/refusal.ts';

/** The value of a reading that must have come off. */
export function readValue<T>(reading: Reading<T>): T {
  if (reading.kind === 'refused') throw new Error(reading.refusals.map(refusalSentence).join('\n'));
  return reading.value;
}

/** The reasons of a reading; none when it came off. */
export function refusalsOf<T>(reading: Reading<T>): readonly Refusal[] {
  return reading.kind === 'refused' ? reading.refusals : [{ path: 'none', expected: 'a refusal', found: 'a reading' }];
}
