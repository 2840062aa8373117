import type { Putt } from '../../../golf/hole.ts';
import { carryError } from '../../../yardages/carryError.ts';
import { type DistanceUnit, plusMinusOfError, wholeDistance } from '../../distance.ts';
import { shotWords } from '../../words/shot.ts';
import { figure } from '../../words.ts';
import { asShot } from './asShot.ts';
import { puttFigure } from './puttLength.ts';
import type { ShotForm } from './shotForm.ts';

/** The putts noted so far: `Putts: 20 ft, missed; length open, holed`. */
export function puttsText(putts: readonly Putt[], unit: DistanceUnit): string {
  const words = shotWords.putts;
  const each = putts.map(({ length_m, holed }) => {
    if (length_m === null) return words.one(words.noLength, holed);
    return words.one(`${figure(puttFigure(length_m, unit))} ${words.unit[unit]}`, holed);
  });
  return words.sentence(each.join('; '));
}

/** The carry of the shot in hand with its ±, as far as it is known: `Carry 74 ± 2 yd`; empty when it is not. */
export function carryText({ entry }: ShotForm, unit: DistanceUnit): string {
  if (entry.carry === null) return '';
  const error = carryError(asShot(entry, 'r', 'in-hand'));
  return shotWords.carry(wholeDistance(entry.carry.m, unit), plusMinusOfError(error, unit), shotWords.unitShort[unit]);
}
