import type { Club } from '../../../golf/club.ts';
import { permissions } from '../../../golf/permissions.ts';
import type { Round } from '../../../golf/round.ts';
import type { Shot } from '../../../golf/shot.ts';
import { carryError } from '../../../yardages/carryError.ts';
import { swingName } from '../../clubName.ts';
import { type DistanceUnit, distanceWithUnit, plusMinusOfError } from '../../distance.ts';
import { shotWords } from '../../words/shot.ts';
import { nameOfClub } from './clubsOfBag.ts';
import { pitchOf } from './pitch.ts';
import { spotWords } from './spotWords.ts';

const { line, sentence } = shotWords;

function whatBecame({ outcome }: Shot): string[] {
  if (outcome === 'in play') return [];
  if (outcome === 'provisional unused') return [line.provisional];
  return [outcome === 'holed' ? shotWords.rests.holed : sentence.ended[outcome]];
}

/**
 * A logged shot in one line: what it was, and what was measured of it. During a round by the Rules
 * the measure is only what was entered, in the words it was entered in: flag and pitch, not the carry
 * that follows from them.
 *
 * Source: R&A and USGA, Rules of Golf (2023), Rule 4.3a(1) and (4), read conservatively.
 */
export function shotLine(
  shot: Shot,
  clubs: readonly Club[],
  unit: DistanceUnit,
  round: Pick<Round, 'play' | 'closed' | 'date' | 'distanceDevices'>,
): { readonly what: string; readonly measured: string } {
  const swing = shot.swing === 'full' ? '' : `${sentence.at}${swingName(shot.swing)}`;
  const what = [
    `${nameOfClub(clubs, shot.clubId, round.date) ?? line.clubOpen}${swing}`,
    shot.lie === null ? line.lieOpen : shotWords.lies[shot.lie],
    ...(shot.strike === null ? [] : [shotWords.strikes[shot.strike]]),
    ...(shot.intent === 'normal' ? [] : [shotWords.intents[shot.intent]]),
    ...whatBecame(shot),
  ].join(', ');
  return { what, measured: measured(shot, unit, permissions(round).measuring) };
}

function measured(shot: Shot, unit: DistanceUnit, reckons: boolean): string {
  const say = (length: Parameters<typeof distanceWithUnit>[0]) => distanceWithUnit(length, unit);
  const spot = pitchOf(shot);
  if (shot.carry && !reckons) {
    return spot && shot.flag_m !== null
      ? line.flag(say(shot.flag_m), spotWords(spot, unit))
      : line.typedCarry(say(shot.carry.m));
  }
  if (shot.carry) return line.carry(say(shot.carry.m), plusMinusOfError(carryError(shot), unit));
  if (shot.total) return line.total(say(shot.total.m));
  return [
    ...(shot.carryAtLeast_m === null ? [] : [line.cleared(say(shot.carryAtLeast_m))]),
    ...(shot.carryAtMost_m === null ? [] : [line.shortOf(say(shot.carryAtMost_m))]),
  ].join(', ');
}
