import type { PlayedHole } from './invented.ts';
import type { PlayedShot } from './playShot.ts';

/** Par of each of the eighteen invented holes. */
export const PARS: readonly number[] = [4, 4, 3, 5, 4, 4, 3, 4, 5, 4, 3, 4, 5, 4, 4, 3, 4, 5];

const tee = (club: string, rest: string, strike = 'solid'): PlayedShot => ({ club, strike, rest });
const at = (
  club: string,
  flag: number,
  pitch: readonly [long: number, right: number],
  more: Partial<PlayedShot> = {},
): PlayedShot => ({ club, strike: 'solid', flag, pitch, rest: 'green', ...more });
const lay = (club: string, rest: string): PlayedShot => ({ club, strike: 'solid', rest });
const chip = (club: string, strike = 'solid'): PlayedShot => ({ club, strike, chip: true, rest: 'green' });
const hole = (shots: readonly PlayedShot[], firstPutt: number, putts: number): PlayedHole => ({
  shots,
  firstPutt,
  putts,
});

/** Eighteen holes of an invented golfer who changes the club on every shot: 40 shots, some of which miss the green. */
export const eighteenHoles: readonly PlayedHole[] = [
  hole([tee('driver', 'fairway'), at('8 iron', 147, [-3, 2])], 20, 2),
  hole([tee('3 wood', 'light rough', 'thin'), at('9 iron', 128, [-6, 1])], 10, 2),
  hole([at('6 iron', 165, [4, -3])], 15, 2),
  hole([tee('driver', 'fairway'), lay('5 iron', 'fairway'), at('54°', 74, [-2, 2], { swing: '9:00' })], 8, 1),
  hole([tee('4 hybrid', 'fairway'), at('7 iron', 152, [-16, 3], { rest: 'light rough' }), chip('58°')], 5, 1),
  hole([tee('driver', 'heavy rough', 'toe'), at('PW', 113, [-5, -4], { swing: 'full' })], 30, 3),
  hole([at('9 iron', 131, [2, 0])], 10, 1),
  hole([tee('3 wood', 'fairway'), at('50°', 104, [1, -6], { swing: 'full' })], 20, 2),
  hole([tee('driver', 'fairway', 'heel'), lay('4 hybrid', 'fairway'), at('58°', 61, [0, 1], { swing: '10:30' })], 4, 1),
  hole([tee('driver', 'light rough'), at('8 iron', 141, [-16, -5], { rest: 'fairway' }), chip('54°')], 6, 2),
  hole([at('5 iron', 178, [-9, 7], { strike: 'thin' })], 40, 2),
  hole([tee('3 wood', 'fairway'), at('PW', 109, [3, 2], { swing: '10:30' })], 15, 2),
  hole([tee('driver', 'fairway'), lay('3 wood', 'light rough'), at('50°', 83, [-4, 0], { swing: '9:00' })], 10, 2),
  hole([tee('driver', 'fairway'), at('7 iron', 156, [-7, -2], { strike: 'fat' })], 20, 2),
  hole([tee('4 hybrid', 'lost', 'heel'), tee('3 wood', 'fairway'), at('9 iron', 126, [-1, 3])], 15, 2),
  hole([at('8 iron', 148, [-17, -6], { rest: 'light rough' }), chip('58°', 'thin')], 8, 2),
  hole([tee('driver', 'fairway'), at('6 iron', 168, [5, 8])], 30, 2),
  hole([tee('driver', 'fairway'), lay('5 iron', 'fairway'), at('54°', 92, [-3, -1], { swing: 'full' })], 5, 1),
];

/** Strokes of each hole as the Rules count them: shots, putts, and one for the ball lost (Rule 18.2b). */
export const STROKES: readonly number[] = eighteenHoles.map(
  ({ shots, putts }) => shots.length + putts + shots.filter(({ rest }) => rest === 'lost').length,
);
