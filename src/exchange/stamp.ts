import { byText, canonicalJson } from './canonicalJson.ts';

/** When a record was changed and on which device: what decides between two of one id. */
export interface Stamp {
  /** Milliseconds since 1970, UTC. */
  readonly ms: number;
  readonly device: string;
}

/** A record that says when and where it was changed last. */
export interface Stamped {
  readonly changedAt: string;
  readonly device: string;
}

/** The stamp of a record. */
export function stampOf(record: Stamped): Stamp {
  return { ms: Date.parse(record.changedAt), device: record.device };
}

/** Negative when `a` is the earlier change; of two at one instant the device with the smaller name is. */
export function byStamp(a: Stamp, b: Stamp): number {
  return a.ms - b.ms || byText(a.device, b.device);
}

/**
 * The one of two records that stays: the later change, else the one with the larger device name, else
 * the one with the larger canonical JSON. A total order, so that any order of imports ends the same.
 */
export function later<T>(a: T, stampA: Stamp, b: T, stampB: Stamp): T {
  const order = byStamp(stampA, stampB);
  if (order !== 0) return order > 0 ? a : b;
  if (JSON.stringify(a) === JSON.stringify(b)) return a;
  return byText(canonicalJson(a), canonicalJson(b)) >= 0 ? a : b;
}
