import type { PlayedShot } from './playShot.ts';

/** A hole as it was played: its shots, then how long the first putt was and how many putts it took. */
export interface PlayedHole {
  readonly shots: readonly PlayedShot[];
  readonly firstPutt: number | null;
  readonly putts: number;
}

const drive = (rest: string, strike = 'solid'): PlayedShot => ({ club: 'driver', strike, rest });
const approach = (
  club: string,
  flag: number,
  pitch: readonly [number, number],
  more: Partial<PlayedShot> = {},
): PlayedShot => ({ club, strike: 'solid', flag, pitch, rest: 'green', ...more });

const chip = (rest: string, strike = 'solid'): PlayedShot => ({ club: '58°', strike, chip: true, rest });

/** Nine holes of an invented golfer: 38 shots, of which some miss the green, and 17 putts. */
export const nineHoles: readonly PlayedHole[] = [
  {
    shots: [drive('fairway'), approach('7 iron', 152, [-16, 3], { rest: 'fairway' }), chip('green')],
    firstPutt: 10,
    putts: 2,
  },
  {
    shots: [
      drive('light rough', 'toe'),
      { club: '5 iron', strike: 'thin', rest: 'fairway' },
      approach('50°', 88, [-16, -4], { swing: '10:30', rest: 'light rough' }),
      chip('fairway', 'fat'),
      chip('green'),
    ],
    firstPutt: 6,
    putts: 1,
  },
  {
    shots: [
      drive('fairway'),
      { club: '3 wood', strike: 'solid', rest: 'light rough' },
      approach('54°', 74, [-4, 2], { swing: '9:00' }),
    ],
    firstPutt: 20,
    putts: 2,
  },
  {
    shots: [
      drive('fairway', 'heel'),
      approach('6 iron', 171, [-17, -6], { rest: 'fairway' }),
      approach('58°', 41, [-5, -1], { swing: '9:00', strike: 'fat' }),
    ],
    firstPutt: 15,
    putts: 2,
  },
  {
    shots: [
      drive('fairway'),
      approach('8 iron', 155, [-16, 5], { rest: 'light rough', strike: 'thin' }),
      approach('58°', 46, [-3, 0], { swing: '9:00' }),
    ],
    firstPutt: 8,
    putts: 2,
  },
  {
    shots: [
      drive('heavy rough', 'thin'),
      { club: '8 iron', strike: 'fat', rest: 'fairway' },
      approach('9 iron', 137, [-16, 2], { rest: 'fairway' }),
      chip('light rough', 'thin'),
      chip('green'),
    ],
    firstPutt: 10,
    putts: 2,
  },
  {
    shots: [
      drive('fairway'),
      approach('4 hybrid', 185, [-17, 4], { rest: 'fairway' }),
      approach('PW', 121, [-2, 4], { swing: 'full' }),
    ],
    firstPutt: null,
    putts: 2,
  },
  {
    shots: [
      drive('fairway'),
      { club: '4 hybrid', strike: 'solid', rest: 'fairway' },
      { club: '5 iron', strike: 'solid', rest: 'fairway' },
      approach('50°', 96, [-17, 7], { swing: 'full', rest: 'light rough' }),
      chip('light rough'),
      chip('green'),
    ],
    firstPutt: 12,
    putts: 2,
  },
  {
    shots: [
      drive('light rough'),
      approach('7 iron', 148, [-16, -2], { rest: 'light rough', strike: 'heel' }),
      approach('54°', 64, [-17, 1], { swing: '9:00', rest: 'fairway' }),
      approach('58°', 52, [-16, 5], { swing: '9:00', rest: 'light rough' }),
      chip('light rough', 'thin'),
      chip('light rough', 'fat'),
      chip('green'),
    ],
    firstPutt: 3,
    putts: 2,
  },
];
