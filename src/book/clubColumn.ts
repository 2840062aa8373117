import { type ClubKind, clubKinds } from '../golf/club.ts';
import type { TeamClub } from './teamPage.ts';

/** A column of the team's table: clubs of several golfers that are called the same thing. */
export interface ClubColumn {
  readonly kind: ClubKind;
  /** Number on the sole for woods, hybrids and irons; loft in whole degrees for wedges; 0 for the driver. */
  readonly mark: number;
}

/*
 * Usual loft of each number, degrees: for a club whose name holds none. Common practice, no source;
 * lofts differ from maker to maker by up to four degrees.
 */
const USUAL_LOFTS: Readonly<Partial<Record<ClubKind, Readonly<Record<number, number>>>>> = {
  'fairway wood': { 3: 15, 4: 16.5, 5: 18, 7: 21, 9: 24 },
  hybrid: { 2: 17, 3: 19.5, 4: 22, 5: 25, 6: 28, 7: 31 },
  'driving iron': { 1: 16, 2: 18, 3: 20, 4: 22.5 },
  iron: { 2: 18, 3: 20, 4: 22.5, 5: 25.5, 6: 29, 7: 33, 8: 37, 9: 41 },
};

/** Lofts that a wedge is called by, degrees. Own choice. */
const LEAST_WEDGE = 40;
const MOST_WEDGE = 72;

/**
 * The column that a club belongs to: by the number in its name, the word its golfer has for it, else by
 * the loft. A wedge without a loft in its name (PW) stands under its loft in whole degrees.
 */
export function clubColumn({ kind, name, loft_deg }: TeamClub): ClubColumn {
  if (kind === 'driver' || kind === 'putter') return { kind, mark: 0 };
  const digits = /\d+/.exec(name);
  const said = digits === null ? Number.NaN : Number(digits[0]);
  if (kind === 'wedge') return { kind, mark: said >= LEAST_WEDGE && said <= MOST_WEDGE ? said : Math.round(loft_deg) };
  if (said >= 1 && said <= 15) return { kind, mark: said };
  const usual = Object.entries(USUAL_LOFTS[kind] ?? {});
  usual.sort(([, a], [, b]) => Math.abs(a - loft_deg) - Math.abs(b - loft_deg));
  return { kind, mark: Number(usual[0]?.[0] ?? 0) };
}

/** Name of a column that is safe in an address and the same on every device. */
export function columnKey({ kind, mark }: ClubColumn): string {
  return `${kind.replaceAll(' ', '-')}-${mark}`;
}

/** Orders columns as a bag is laid out: driver first, then by kind and number. */
export function byBagOrder(a: ClubColumn, b: ClubColumn): number {
  return clubKinds.indexOf(a.kind) - clubKinds.indexOf(b.kind) || a.mark - b.mark;
}
