import type { Logbook } from '../golf/logbook.ts';
import type { Measure, Shot } from '../golf/shot.ts';
import { metres } from '../units/metres.ts';
import { carryError } from '../yardages/carryError.ts';
import { type CarrybookFile, carrybookFileOf, carrybookFileSchema } from './carrybookFile.ts';
import { elementOf, type Schema, shapeOf } from './schemaTree.ts';

/** What a golfer lets out of the phone when a book is handed over. Shots and clubs always go; the rest is chosen. */
export interface ShareChoices {
  /** The name that goes with it; empty: none. */
  readonly nickname: string;
  /** Places marked by satellite. Without them their error stays with the measure. */
  readonly marks: boolean;
  /** The golfer's own notes on shots and clubs. */
  readonly notes: boolean;
  /** Names of courses and tees. */
  readonly courses: boolean;
}

/** What goes when nothing else was chosen: the nickname, and neither marks nor notes. */
export function usualShare(nickname: string): ShareChoices {
  return { nickname, marks: false, notes: false, courses: true };
}

/** Stamps stand on holes and spec periods beside their schema, and a merge needs them. */
const STAMP_KEYS = ['changedAt', 'device'];

/** The value with nothing under keys that this version does not know: what cannot be named in a preview does not go. */
function knownOnly(value: unknown, schema: Schema): unknown {
  if (Array.isArray(value)) {
    const element = elementOf(schema);
    return element ? value.map((each) => knownOnly(each, element)) : value;
  }
  const shape = shapeOf(schema);
  if (typeof value !== 'object' || value === null || !shape) return value;
  const kept: Record<string, unknown> = {};
  for (const [key, inner] of Object.entries(value)) {
    if (Object.hasOwn(shape, key)) kept[key] = knownOnly(inner, shape[key]);
    else if (STAMP_KEYS.includes(key) && typeof inner === 'string') kept[key] = inner;
  }
  return kept;
}

/** Satellite error of a carry goes along when its marks stay: what the marks would have said of it. */
function withError(shot: Shot): Measure | null {
  const { carry } = shot;
  if (carry?.by !== 'gnss' || carry.error_m !== null) return carry;
  return { ...carry, error_m: metres(Math.min(200, carryError(shot))) };
}

function sharedShot(shot: Shot, choices: ShareChoices): Shot {
  const bare = choices.marks
    ? shot
    : { ...shot, carry: withError(shot), marks: { ball: null, pitch: null, rest: null } };
  return choices.notes ? bare : { ...bare, note: '' };
}

/**
 * The file that a golfer hands over: the logbook less what stays on the phone. Keys that this version
 * does not know never go. The numbers reckoned from it are those reckoned from the logbook itself: marks
 * leave the error they gave a carry behind in `error_m`. Scope `share`: it cannot be restored as a logbook.
 *
 * @param exportedAt instant of the handing over.
 */
export function shareFile(logbook: Logbook, choices: ShareChoices, exportedAt: string): CarrybookFile {
  const { notes, courses } = choices;
  const shared: Logbook = {
    player: { ...logbook.player, name: choices.nickname },
    clubs: notes
      ? logbook.clubs
      : logbook.clubs.map((club) => ({
          ...club,
          specPeriods: club.specPeriods.map((spec) => ({ ...spec, note: '' })),
        })),
    rounds: logbook.rounds.map((round) => ({
      ...round,
      ...(courses ? {} : { course: '', tees: '' }),
    })),
    shots: logbook.shots.map((shot) => sharedShot(shot, choices)),
    reviews: logbook.reviews,
    done: logbook.done,
    deleted: logbook.deleted,
  };
  const file = carrybookFileOf(shared, exportedAt, 'share');
  return knownOnly(file, carrybookFileSchema) as CarrybookFile;
}
