import type { DistanceUnit } from '../../distance.ts';
import { shotWords } from '../../words/shot.ts';
import { figure } from '../../words.ts';
import type { ShotForm } from './shotForm.ts';

/** What the open slot asks. */
export function slotQuestion({ slot, shotId }: ShotForm): string {
  const { question } = shotWords;
  if (slot === null) return question.ready;
  if (shotId !== null && slot === 'rest') return question.restEdit;
  return shotId !== null && slot === 'pitch' ? question.pitchEdit : question[slot];
}

/** What is asked about the putt in hand. */
export function puttQuestion(before: number, length: number | null, unit: DistanceUnit): string {
  const { putts } = shotWords;
  if (length !== null) return putts.holed;
  const spoken = putts.unitLong[unit];
  return before === 0 ? putts.first(spoken) : putts.next(figure(before + 1), spoken);
}
