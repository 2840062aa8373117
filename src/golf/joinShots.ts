import type { Shot } from './shot.ts';
import type { ShotChanges } from './shotEntry.ts';
import { NOTE_LIMIT } from './text.ts';

/** Whether anything was said of where a shot ended. */
function hasEnd(shot: Shot): boolean {
  return shot.restLie !== null || (shot.outcome !== 'in play' && shot.outcome !== 'provisional unused');
}

/**
 * What changes of the first of two entries that were one shot; the second is then taken away. What the first left open
 * is filled from the second. The end is the second's where it has one: rest, outcome, penalty strokes, mark of the rest.
 * Flag and aim go together, and so do the distances, so that no measure is read against another's flag. Which of the
 * two a figure is taken from is our own choice.
 */
export function joinShots(first: Shot, second: Shot): ShotChanges {
  const end = hasEnd(second) ? second : first;
  const aimed = first.flag_m === null && second.flag_m !== null ? second : first;
  const isMeasured = [first.carry, first.total, first.carryAtLeast_m, first.carryAtMost_m].some(
    (each) => each !== null,
  );
  const measured = isMeasured ? first : second;
  return {
    clubId: first.clubId ?? second.clubId,
    swing: first.clubId === null ? second.swing : first.swing,
    lie: first.lie ?? second.lie,
    tags: [...new Set([...first.tags, ...second.tags])],
    strike: first.strike ?? second.strike,
    flag_m: aimed.flag_m,
    aim: aimed.aim,
    carry: measured.carry,
    carryAtLeast_m: measured.carryAtLeast_m,
    carryAtMost_m: measured.carryAtMost_m,
    total: measured.total,
    offline_m: measured.offline_m,
    restLie: end.restLie,
    outcome: end.outcome,
    penalty: end.penalty,
    marks: {
      ...second.marks,
      ...first.marks,
      ball: first.marks.ball ?? second.marks.ball,
      pitch: first.marks.pitch ?? second.marks.pitch,
      rest: second.marks.rest ?? first.marks.rest,
    },
    wind: first.wind ?? second.wind,
    rise_m: first.rise_m ?? second.rise_m,
    note: [first.note, second.note]
      .filter((note) => note !== '')
      .join(' ')
      .slice(0, NOTE_LIMIT),
  };
}
