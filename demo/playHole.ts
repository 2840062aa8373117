import type { Outcome } from '../src/golf/shot.ts';
import type { CourseHole } from './courses.ts';
import { type Ball, type HoleToPlay, type Played, playShot } from './playShot.ts';
import { puttsFrom } from './putting.ts';
import { centimetres, fromYards, type HoleRecord, type ShotRecord, wholeYards } from './records.ts';
import { distance, onGreen, type Place } from './resting.ts';
import type { SeededNumbers } from './seededNumbers.ts';

/** A ball nobody sees again, or one out of bounds, or one in the water: nothing of it is measured. */
function gone(played: Played, outcome: Outcome, penalty: number): ShotRecord {
  return {
    ...played.shot,
    carry: null,
    carryAtLeast_m: null,
    total: null,
    offline_m: null,
    restLie: null,
    outcome,
    penalty,
    marks: { ball: null, pitch: null, rest: null },
  };
}

/** Where a ball from a penalty area is dropped: beside it, or behind it, no nearer the hole. */
function dropPlace(from: Place, played: Played, hole: CourseHole): Place {
  if (played.resting.kind !== 'penalty area') return from;
  const { trouble } = played.resting;
  if (trouble.side !== 'across') {
    const sign = trouble.side === 'right' ? 1 : -1;
    return { along: played.pitch.along, right: sign * (trouble.off_m - 3) };
  }
  const behind = Math.max(-trouble.begins_m - fromYards(8), -hole.length_m.back + 10);
  return { along: Math.max(from.along, behind), right: 0 };
}

/** One hole from tee to cup: every shot as it was logged, and the score. */
export function playHole(to: HoleToPlay, numbers: SeededNumbers): { hole: HoleRecord; shots: ShotRecord[] } {
  const { hole, plan, event, golfer } = to;
  const length_m = hole.length_m[plan.tees];
  const shots: ShotRecord[] = [];
  let ball: Ball = { place: { along: -length_m, right: 0 }, lie: 'tee', fromDrop: false };
  let holed = false;
  let result: HoleRecord['result'] = 'played';
  const next = (): Played => playShot(to, ball, shots.length + 1, numbers);
  const rough = (from: Place): Place => ({ along: from.along + 0.55 * length_m, right: hole.half_m + fromYards(22) });

  if (event === 'lost') shots.push(gone(next(), 'lost', 1));
  if (event === 'provisional played') {
    shots.push({ ...gone(next(), 'lost', 1), note: 'never found; the provisional is in play' });
  }
  if (event === 'provisional unused') {
    const original = next();
    shots.push({ ...gone(original, 'in play', 0), restLie: 'heavy rough', note: 'found after a minute' });
    const provisional = next();
    const lie = provisional.resting.kind === 'at rest' ? provisional.resting.lie : null;
    shots.push({ ...provisional.shot, restLie: lie, outcome: 'provisional unused', note: 'provisional' });
    ball = { place: rough(ball.place), lie: 'heavy rough', fromDrop: false };
  }
  while (!onGreen(ball.place) && !holed) {
    const played = next();
    const { resting } = played;
    if (resting.kind === 'penalty area') {
      const across = resting.trouble.side === 'across' && ball.lie !== 'tee';
      const far = wholeYards(-resting.trouble.ends_m - ball.place.along);
      shots.push({ ...gone(played, 'penalty area', 1), carryAtMost_m: across && far > 30 ? far : null });
      ball = {
        place: dropPlace(ball.place, played, hole),
        lie: numbers.pick(['light rough', 'fairway']),
        fromDrop: true,
      };
    } else if (resting.kind === 'out of bounds' || (resting.nearTrees && numbers.chance(0.04))) {
      shots.push(gone(played, resting.kind === 'out of bounds' ? 'out of bounds' : 'lost', 1));
      ball = { ...ball, fromDrop: ball.lie !== 'tee' };
    } else {
      const near = distance(played.rest, to.cut) < (played.shot.intent === 'chip' ? 0.15 : 0.1);
      holed = near;
      shots.push(near ? { ...played.shot, restLie: 'holed', outcome: 'holed' } : played.shot);
      ball = { place: played.rest, lie: resting.lie === 'green' ? 'fairway' : resting.lie, fromDrop: false };
      if (resting.lie === 'green' && !near) break;
    }
    if (shots.length > 10 || (event === 'picked up' && shots.length >= hole.par)) {
      result = 'picked up';
      break;
    }
  }
  if (event === 'picked up') result = 'picked up';
  if (event === 'conceded') {
    result = 'conceded';
    shots[shots.length - 1] = {
      ...shots[shots.length - 1],
      outcome: 'conceded',
      note: 'match play: the hole is given',
    };
  }
  const putter = golfer.clubs[golfer.clubs.length - 1];
  const putting = { putterId: putter.id, evenPutt_m: golfer.evenPutt_m, lengths: numbers.chance(0.96) };
  const putts = result === 'played' && !holed ? puttsFrom(distance(ball.place, to.cut), putting, numbers) : [];
  const penalties = shots.reduce((sum, shot) => sum + shot.penalty, 0);
  const counted = shots.filter((shot) => shot.outcome !== 'provisional unused').length;
  const record: HoleRecord = {
    number: hole.number,
    par: hole.par,
    length_m: centimetres(length_m),
    bearing_deg: hole.bearing_deg,
    strokes: result === 'played' ? counted + penalties + putts.length : null,
    penalties,
    result,
    putts,
  };
  return { hole: record, shots };
}
