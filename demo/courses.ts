import { fromYards } from './records.ts';

/** Trouble along a hole, placed by distance to go to the middle of the green, m. */
export interface Trouble {
  readonly kind: 'penalty area' | 'out of bounds' | 'fairway bunker';
  /** `across`: the whole width of the hole. */
  readonly side: 'left' | 'right' | 'across';
  /** Distance to go where it begins (seen from the tee) and ends, m; begins > ends. */
  readonly begins_m: number;
  readonly ends_m: number;
  /** How far off the line it starts, m (unused for `across`). */
  readonly off_m: number;
}

export interface CourseHole {
  readonly number: number;
  readonly par: number;
  readonly length_m: Readonly<Record<string, number>>;
  readonly bearing_deg: number;
  /** Half the width of the fairway, m. */
  readonly half_m: number;
  /** Rise from the last shot's place to the green, m; known from the yardage book. */
  readonly rise_m: number;
  /** True where a driver is too much club from the tee. */
  readonly tight: boolean;
  readonly trouble: readonly Trouble[];
}

export interface Course {
  readonly name: string;
  readonly altitude_m: number;
  readonly holes: readonly CourseHole[];
}

type TroubleRow = [kind: 'P' | 'O' | 'B', side: 'left' | 'right' | 'across', begins: number, ends: number, off: number];
type HoleRow = [par: number, back: number, front: number, bearing: number, half: number, more?: HoleMore];
interface HoleMore {
  rise?: number;
  tight?: boolean;
  t?: TroubleRow[];
}

const troubleKinds = { P: 'penalty area', O: 'out of bounds', B: 'fairway bunker' } as const;

function course(name: string, altitude_m: number, tees: [string, string], rows: readonly HoleRow[]): Course {
  const holes = rows.map(
    ([par, back, front, bearing_deg, half, more = {}], index): CourseHole => ({
      number: index + 1,
      par,
      length_m: { [tees[0]]: fromYards(back), [tees[1]]: fromYards(front) },
      bearing_deg,
      half_m: fromYards(half),
      rise_m: fromYards(more.rise ?? 0),
      tight: more.tight ?? false,
      trouble: (more.t ?? []).map(([kind, side, begins, ends, off]) => ({
        kind: troubleKinds[kind],
        side,
        begins_m: fromYards(begins),
        ends_m: fromYards(ends),
        off_m: fromYards(off),
      })),
    }),
  );
  return { name, altitude_m, holes };
}

/** An invented home course; lengths, widths and heights in yards. */
export const homeCourse = course(
  'Larkfield Down (invented)',
  85,
  ['back', 'forward'],
  [
    [4, 372, 352, 245, 17, { t: [['B', 'left', 172, 150, 12]] }],
    [4, 398, 371, 60, 16, { t: [['O', 'right', 300, 60, 32]] }],
    [3, 163, 148, 150, 12, { rise: -5 }],
    [
      5,
      512,
      486,
      240,
      18,
      {
        t: [
          ['P', 'across', 118, 100, 0],
          ['B', 'right', 300, 270, 13],
        ],
      },
    ],
    [4, 341, 322, 15, 13, { tight: true, t: [['P', 'left', 180, 20, 26]] }],
    [4, 415, 388, 200, 17, { t: [['B', 'left', 210, 185, 12]] }],
    [3, 187, 171, 290, 12],
    [4, 366, 349, 95, 15, { rise: 5, t: [['O', 'left', 260, 120, 34]] }],
    [5, 497, 470, 320, 17, { t: [['B', 'left', 280, 255, 11]] }],
    [4, 385, 362, 130, 16, { t: [['P', 'right', 190, 90, 27]] }],
    [4, 327, 309, 225, 12, { tight: true, t: [['B', 'right', 112, 92, 8]] }],
    [3, 142, 131, 20, 12, { t: [['P', 'across', 62, 17, 0]] }],
    [4, 404, 380, 270, 17],
    [5, 534, 505, 85, 18, { t: [['P', 'right', 340, 220, 28]] }],
    [4, 358, 340, 180, 15, { tight: true, rise: 4 }],
    [3, 205, 182, 45, 13],
    [4, 376, 355, 300, 16, { t: [['B', 'right', 165, 140, 12]] }],
    [4, 421, 396, 110, 18, { t: [['O', 'right', 420, 200, 36]] }],
  ],
);

/** An invented course in the hills, where the air is thinner. */
export const hillCourse = course(
  'Quillmere Heath (invented)',
  640,
  ['back', 'forward'],
  [
    [4, 388, 360, 75, 17, { t: [['B', 'right', 175, 150, 12]] }],
    [3, 176, 158, 310, 12, { rise: 5 }],
    [4, 409, 381, 190, 16, { t: [['P', 'left', 240, 120, 28]] }],
    [5, 521, 490, 25, 17, { t: [['O', 'left', 480, 180, 36]] }],
    [4, 346, 325, 255, 13, { tight: true }],
    [4, 377, 356, 140, 16, { rise: -4, t: [['B', 'left', 150, 125, 12]] }],
    [3, 151, 139, 35, 12],
    [5, 503, 475, 215, 18, { t: [['P', 'across', 92, 74, 0]] }],
    [4, 396, 370, 330, 16],
    [4, 364, 344, 100, 15, { tight: true, t: [['O', 'right', 260, 90, 32]] }],
    [4, 418, 392, 280, 17, { t: [['B', 'right', 205, 180, 12]] }],
    [3, 194, 175, 165, 13, { rise: -5 }],
    [4, 352, 330, 5, 14, { t: [['P', 'right', 150, 30, 24]] }],
    [5, 540, 508, 235, 18],
    [4, 381, 358, 60, 16, { t: [['B', 'left', 165, 140, 12]] }],
    [4, 334, 315, 120, 13, { tight: true }],
    [3, 168, 152, 345, 12, { t: [['P', 'across', 70, 18, 0]] }],
    [4, 402, 377, 205, 17, { t: [['O', 'left', 300, 150, 35]] }],
  ],
);
