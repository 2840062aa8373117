import { type Club, type SpecPeriod, specOn } from './club.ts';

/** How a club is built, as entered: the spec of a period without its id and first day. */
export interface SpecForm {
  readonly loft_deg: SpecPeriod['loft_deg'];
  readonly lie_deg: SpecPeriod['lie_deg'];
  readonly length_m: SpecPeriod['length_m'];
  readonly bounce_deg: SpecPeriod['bounce_deg'];
  readonly shaft: string;
  readonly head: string;
  readonly note: string;
}

/** A club as entered; `id` is null for a new one. */
export interface ClubForm {
  readonly id: string | null;
  readonly kind: Club['kind'];
  readonly name: string;
  readonly inBag: boolean;
  readonly claimed_m: Club['claimed_m'];
  readonly notPlayed: Club['notPlayed'];
  readonly launch: Club['launch'];
  readonly spec: SpecForm;
}

const BUILD_KEYS = ['loft_deg', 'lie_deg', 'length_m', 'bounce_deg', 'shaft', 'head'] as const;

/** Whether the club is built differently: another loft, lie, length, bounce, shaft or head. A note is no change. */
export function builtDifferently(one: SpecForm, other: SpecForm): boolean {
  return BUILD_KEYS.some((key) => one[key] !== other[key]);
}

/**
 * The spec periods of a club after an entry. With a day, a club built differently starts a new period
 * on it; without one, or when nothing about the build changed, the period of `today` is corrected. A
 * period that began on that very day is corrected too: one day holds one build.
 *
 * @param day first day of the new build as `YYYY-MM-DD`; null: the record was wrong, not the club.
 * @param today the day whose period counts as the present one, `YYYY-MM-DD`.
 * @param newId id for a new period.
 */
export function periodsAfter(
  club: Club,
  spec: SpecForm,
  day: string | null,
  today: string,
  newId: string,
): SpecPeriod[] {
  const present = specOn(club, day ?? today);
  const starts = day !== null && builtDifferently(present, spec) && present.from !== day;
  if (starts) return [...club.specPeriods, { ...spec, id: newId, from: day }];
  return club.specPeriods.map((period) => (period.id === present.id ? { ...period, ...spec } : period));
}
