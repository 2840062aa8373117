import type { Stamped } from './stamp.ts';

/**
 * A record as changed now: the new stamp, and its holes or spec periods without stamps of their own, so
 * that all of it is as new as this change. Everything that edits a round or a club goes through here:
 * a hole that kept the stamp of an old merge would lose against the state before the edit.
 *
 * @param changedAt an instant, ISO 8601 UTC.
 */
export function changedRecord<T extends Stamped>(record: T, changedAt: string, device: string): T {
  const pieces: { [key: string]: unknown } = {};
  for (const [key, value] of Object.entries(record)) {
    if ((key === 'holes' || key === 'specPeriods') && Array.isArray(value)) pieces[key] = value.map(withoutStamp);
  }
  return { ...record, ...pieces, changedAt, device };
}

function withoutStamp({ changedAt: _changedAt, device: _device, ...piece }: { [key: string]: unknown }): object {
  return piece;
}
