import type { Club, SpecPeriod } from '../../golf/club.ts';
import type { ClubForm } from '../../golf/clubForm.ts';
import { degrees } from '../../units/degrees.ts';
import { inches, inchesFromMetres, metresFromInches } from '../../units/inches.ts';
import { type Metres, metres } from '../../units/metres.ts';
import { metresFromYards, yards } from '../../units/yards.ts';
import { type DistanceUnit, inUnit } from '../distance.ts';
import { typedNumber } from '../typedNumber.ts';

/** What stands in the form of a club; a field left empty is text without a character. */
export interface ClubText {
  readonly kind: Club['kind'];
  readonly name: string;
  readonly inBag: boolean;
  readonly loft: string;
  readonly lie: string;
  /** In inches. */
  readonly length: string;
  readonly bounce: string;
  readonly shaft: string;
  readonly note: string;
  /** In the unit shown. */
  readonly claimed: string;
  readonly notPlayed: Club['notPlayed'];
}

/** The fields that hold a number. */
export type ClubNumber = 'loft' | 'lie' | 'length' | 'bounce' | 'claimed';

/** What the form says, or the field that is empty where it must not be, or holds no number or one no club has. */
export type ClubRead =
  | { readonly kind: 'ok'; readonly form: ClubForm }
  | { readonly kind: 'wrong'; readonly field: ClubNumber };

/** The least and the most that the record of a club holds, in the unit of the field. */
const LIMITS: Readonly<Record<Exclude<ClubNumber, 'claimed'>, readonly [number, number]>> = {
  loft: [0, 90],
  lie: [40, 90],
  length: [12, 62],
  bounce: [-5, 30],
};
const CLAIM_LIMITS_M: readonly [number, number] = [1, 500];

/** A new club as its form stands at first. */
export const blankClub: ClubText = {
  kind: 'iron',
  name: '',
  inBag: true,
  loft: '',
  lie: '',
  length: '',
  bounce: '',
  shaft: '',
  note: '',
  claimed: '',
  notPlayed: [],
};

function rounded(value: number, digits: number): string {
  return String(Number(value.toFixed(digits)));
}

/** A carry as it stands in a field, to the whole yard or metre; empty when there is none. */
export function carryText(length: Metres | null, unit: DistanceUnit): string {
  return length === null ? '' : rounded(inUnit(length, unit), 0);
}

/** The carry that a field says: null when it is empty, `wrong` when it is none that a club can have. */
export function readCarry(text: string, unit: DistanceUnit): Metres | null | 'wrong' {
  const typed = typedNumber(text);
  if (typed === null || typed === 'wrong') return typed;
  const length = unit === 'yards' ? metresFromYards(yards(typed)) : metres(typed);
  return length >= CLAIM_LIMITS_M[0] && length <= CLAIM_LIMITS_M[1] ? length : 'wrong';
}

/** The form of a club as it stands in the logbook, built as in the period given. */
export function clubTextOf(club: Club, spec: SpecPeriod, unit: DistanceUnit): ClubText {
  return {
    kind: club.kind,
    name: club.name,
    inBag: club.inBag,
    loft: rounded(spec.loft_deg, 2),
    lie: spec.lie_deg === null ? '' : rounded(spec.lie_deg, 2),
    length: spec.length_m === null ? '' : rounded(inchesFromMetres(spec.length_m), 2),
    bounce: spec.bounce_deg === null ? '' : rounded(spec.bounce_deg, 2),
    shaft: spec.shaft,
    note: spec.note,
    claimed: carryText(club.claimed_m, unit),
    notPlayed: club.notPlayed,
  };
}

/**
 * Reads the form. A field that still says what the club already has leaves that figure as it is: what
 * is shown rounded is not stored rounded.
 *
 * @param before the club and its present build; null: a new club.
 */
export function readClub(
  text: ClubText,
  before: { readonly club: Club; readonly spec: SpecPeriod } | null,
  unit: DistanceUnit,
): ClubRead {
  const shown = before && clubTextOf(before.club, before.spec, unit);
  const read = <T>(field: keyof typeof LIMITS, was: T | undefined, make: (value: number) => T): T | null | 'wrong' => {
    if (shown && was !== undefined && text[field].trim() === shown[field]) return was;
    const typed = typedNumber(text[field]);
    if (typed === null || typed === 'wrong') return typed;
    const [least, most] = LIMITS[field];
    return typed >= least && typed <= most ? make(typed) : 'wrong';
  };
  const spec = before?.spec;
  const loft_deg = read('loft', spec?.loft_deg, degrees);
  const lie_deg = read('lie', spec?.lie_deg, degrees);
  const length_m = read('length', spec?.length_m, (value) => metresFromInches(inches(value)));
  const bounce_deg = read('bounce', spec?.bounce_deg, degrees);
  const isSameClaim = shown !== null && text.claimed.trim() === shown.claimed;
  const claimed_m = isSameClaim && before ? before.club.claimed_m : readCarry(text.claimed, unit);
  if (loft_deg === null || loft_deg === 'wrong') return { kind: 'wrong', field: 'loft' };
  if (lie_deg === 'wrong') return { kind: 'wrong', field: 'lie' };
  if (length_m === 'wrong') return { kind: 'wrong', field: 'length' };
  if (bounce_deg === 'wrong') return { kind: 'wrong', field: 'bounce' };
  if (claimed_m === 'wrong') return { kind: 'wrong', field: 'claimed' };
  const form: ClubForm = {
    id: before?.club.id ?? null,
    kind: text.kind,
    name: text.name.trim(),
    inBag: text.inBag,
    claimed_m: text.kind === 'putter' ? null : claimed_m,
    notPlayed: text.notPlayed,
    launch: before?.club.launch ?? null,
    spec: {
      loft_deg,
      lie_deg,
      length_m,
      bounce_deg,
      shaft: text.shaft.trim(),
      head: spec?.head ?? '',
      note: text.note.trim(),
    },
  };
  return { kind: 'ok', form };
}
