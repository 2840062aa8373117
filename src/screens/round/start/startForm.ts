import { HOLE_LIMIT } from '../../../golf/hole.ts';
import type { RoundStart } from '../../../golf/newRound.ts';
import type { Ball, Play } from '../../../golf/round.ts';
import type { Degrees } from '../../../units/degrees.ts';
import type { ShownUnits } from '../shownUnits.ts';
import { type ConditionNumber, type ConditionsForm, conditionsFormOf, readConditions } from './conditionsForm.ts';
import { typedNumber } from './typedNumber.ts';

/** What stands in the form that a round starts from; a field left empty is text without a character. */
export interface StartForm extends ConditionsForm {
  readonly course: string;
  readonly tees: string;
  readonly holes: '9' | '18';
  readonly startHole: string;
  readonly play: Play;
  readonly ball: Ball;
  readonly distanceDevices: boolean;
}

/** The fields that hold a number. */
export type NumberField = 'startHole' | ConditionNumber;

/** What the form says, or the field that holds something else than a number. */
export type StartRead =
  | {
      readonly kind: 'ok';
      readonly start: RoundStart;
      /** Bearing of the first hole, when the golfer told it; null: not told. */
      readonly bearing_deg: Degrees | null;
    }
  | { readonly kind: 'wrong'; readonly field: NumberField };

function isHole(number: number): boolean {
  return Number.isInteger(number) && number >= 1 && number <= HOLE_LIMIT;
}

/** The form as it stands when a round begins, with what is remembered of the last one. */
export function startFormOf(start: RoundStart, units: ShownUnits): StartForm {
  return {
    course: start.course,
    tees: start.tees,
    holes: start.holes === 9 ? '9' : '18',
    startHole: String(start.startHole),
    play: start.play,
    ball: start.ball,
    distanceDevices: start.distanceDevices,
    ...conditionsFormOf(start.conditions, units),
  };
}

/** Reads the form. Whether a number is one that a round may hold is for the action to say. */
export function readStart(form: StartForm, units: ShownUnits): StartRead {
  const startHole = typedNumber(form.startHole) ?? 1;
  if (startHole === 'wrong' || !isHole(startHole)) return { kind: 'wrong', field: 'startHole' };
  const read = readConditions(form, units);
  if (read.kind === 'wrong') return read;
  return {
    kind: 'ok',
    start: {
      course: form.course.trim(),
      tees: form.tees.trim(),
      holes: form.holes === '9' ? 9 : 18,
      startHole,
      play: form.play,
      ball: form.play === 'practice ground' ? form.ball : 'own',
      distanceDevices: form.distanceDevices,
      conditions: read.conditions,
    },
    bearing_deg: read.bearing_deg,
  };
}
