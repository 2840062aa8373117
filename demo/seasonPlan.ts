import { type Course, hillCourse, homeCourse } from './courses.ts';

/** The true weather of a round. */
export interface Weather {
  readonly temperature_C: number;
  readonly altitude_m: number;
  /** Bearing the wind comes from. */
  readonly windFrom_deg: number;
  /** Mean wind at 10 m, m/s. */
  readonly wind_mps: number;
  readonly ground: 'soft' | 'normal' | 'firm';
  readonly wet: boolean;
}

/** What must happen on a hole, whatever the swings bring. */
export type HoleEvent =
  | 'lost'
  | 'provisional unused'
  | 'provisional played'
  | 'picked up'
  | 'conceded'
  | 'shot not logged';

export interface RoundPlan {
  readonly date: string;
  readonly course: Course;
  readonly tees: 'back' | 'forward';
  readonly play: 'rules' | 'casual';
  readonly weather: Weather;
  readonly startHole: number;
  /** How many holes are played. */
  readonly holes: number;
  /** False where distance devices are not allowed: distances are paced or judged. */
  readonly devices: boolean;
  /** False where no wind was noted at the start. */
  readonly windNoted: boolean;
  readonly events: Readonly<Record<number, HoleEvent>>;
}

/** Balls hit on the practice ground: one row a cell. */
export interface PracticePlan {
  readonly date: string;
  readonly ball: 'own' | 'range';
  readonly weather: Weather;
  readonly ladder: readonly { readonly clubId: string; readonly swing: string; readonly balls: number }[];
}

interface More {
  events?: Record<number, HoleEvent>;
  play?: 'rules' | 'casual';
  wet?: boolean;
  startHole?: number;
  holes?: number;
  devices?: boolean;
  windNoted?: boolean;
}

function round(
  date: string,
  place: 'home' | 'hill',
  tees: 'back' | 'forward',
  [temperature_C, windFrom_deg, wind_mps, ground]: [number, number, number, Weather['ground']],
  more: More = {},
): RoundPlan {
  const course = place === 'home' ? homeCourse : hillCourse;
  const weather = {
    temperature_C,
    altitude_m: course.altitude_m,
    windFrom_deg,
    wind_mps,
    ground,
    wet: more.wet ?? false,
  };
  return {
    date,
    course,
    tees,
    play: more.play ?? 'rules',
    weather,
    startHole: more.startHole ?? 1,
    holes: more.holes ?? 18,
    devices: more.devices ?? true,
    windNoted: more.windNoted ?? true,
    events: more.events ?? {},
  };
}

/** A cold spring, three weeks without golf in April, a warm July. */
export const playerRounds: readonly RoundPlan[] = [
  round('2026-03-14', 'home', 'forward', [5, 250, 5.5, 'soft'], { play: 'casual', events: { 4: 'lost' } }),
  round('2026-03-21', 'home', 'back', [6, 310, 7, 'soft'], { wet: true, events: { 18: 'provisional unused' } }),
  round('2026-03-28', 'hill', 'back', [4, 20, 6, 'normal'], { windNoted: false, events: { 9: 'shot not logged' } }),
  round('2026-04-04', 'home', 'back', [9, 225, 4, 'soft'], { play: 'casual', events: { 8: 'picked up' } }),
  round('2026-04-11', 'home', 'back', [11, 180, 3, 'normal'], { startHole: 10, events: { 13: 'shot not logged' } }),
  round('2026-05-05', 'home', 'forward', [14, 270, 3.5, 'normal'], { play: 'casual', events: { 3: 'picked up' } }),
  round('2026-05-16', 'hill', 'back', [16, 300, 4.5, 'normal'], { events: { 4: 'provisional played' } }),
  round('2026-05-23', 'home', 'back', [18, 140, 2, 'normal'], { devices: false }),
  round('2026-06-06', 'home', 'back', [21, 200, 5, 'normal'], { play: 'casual', events: { 15: 'conceded' } }),
  round('2026-06-13', 'hill', 'forward', [22, 90, 2.5, 'firm'], { events: { 10: 'provisional unused' } }),
  round('2026-06-27', 'home', 'back', [25, 240, 3, 'firm'], { startHole: 5, events: { 6: 'shot not logged' } }),
  round('2026-07-04', 'home', 'back', [27, 0, 0, 'firm'], { play: 'casual', events: { 14: 'lost' } }),
  round('2026-07-18', 'home', 'back', [28, 215, 4, 'firm'], { events: { 2: 'provisional unused' } }),
];

/** Fewer cold days, one round of nine holes, the same pause. */
export const coachRounds: readonly RoundPlan[] = [
  round('2026-03-15', 'home', 'back', [6, 260, 4.5, 'soft'], { play: 'casual', events: { 2: 'provisional unused' } }),
  round('2026-03-22', 'home', 'back', [7, 330, 6, 'soft'], { play: 'casual', wet: true }),
  round('2026-03-29', 'hill', 'back', [5, 40, 5, 'normal'], { windNoted: false, events: { 7: 'shot not logged' } }),
  round('2026-04-06', 'home', 'back', [10, 210, 3, 'normal'], { events: { 14: 'lost' } }),
  round('2026-04-12', 'home', 'forward', [12, 190, 4, 'normal'], { play: 'casual', holes: 9 }),
  round('2026-05-07', 'home', 'back', [15, 280, 4, 'normal'], { play: 'casual', events: { 5: 'picked up' } }),
  round('2026-05-17', 'hill', 'back', [15, 310, 5.5, 'normal'], { events: { 17: 'shot not logged' } }),
  round('2026-05-30', 'home', 'back', [19, 120, 2.5, 'normal'], { play: 'casual', events: { 11: 'conceded' } }),
  round('2026-06-07', 'home', 'back', [20, 220, 4.5, 'normal'], { startHole: 10 }),
  round('2026-06-14', 'hill', 'back', [23, 70, 2, 'firm'], { events: { 4: 'provisional played' } }),
  round('2026-06-21', 'home', 'back', [24, 250, 3.5, 'firm'], { play: 'casual', windNoted: false }),
  round('2026-07-05', 'home', 'back', [28, 10, 1.5, 'firm'], { devices: false, events: { 8: 'provisional unused' } }),
  round('2026-07-12', 'hill', 'forward', [26, 160, 3, 'firm'], { play: 'casual', events: { 6: 'shot not logged' } }),
  round('2026-07-19', 'home', 'back', [27, 230, 3.5, 'firm']),
];

const calm = (temperature_C: number): Weather => ({
  temperature_C,
  altitude_m: homeCourse.altitude_m,
  windFrom_deg: 0,
  wind_mps: 0,
  ground: 'normal',
  wet: false,
});

const ladder = (balls: number, ...cells: [clubId: string, swing: string][]): PracticePlan['ladder'] =>
  cells.map(([clubId, swing]) => ({ clubId, swing, balls }));

export const playerPractice: readonly PracticePlan[] = [
  {
    date: '2026-03-25',
    ball: 'range',
    weather: calm(8),
    ladder: ladder(10, ['tib-c12', '9:00'], ['tib-c13', '9:00'], ['tib-c13', '10:30']),
  },
  {
    date: '2026-05-14',
    ball: 'own',
    weather: calm(17),
    ladder: ladder(10, ['tib-c13', 'full'], ['tib-c13', '10:30'], ['tib-c13', '9:00']),
  },
  { date: '2026-06-18', ball: 'range', weather: calm(23), ladder: ladder(8, ['tib-c14', '9:00'], ['tib-c14', '7:30']) },
];

export const coachPractice: readonly PracticePlan[] = [
  { date: '2026-04-02', ball: 'own', weather: calm(10), ladder: ladder(10, ['quo-c12', '9:00'], ['quo-c12', '10:30']) },
  {
    date: '2026-06-10',
    ball: 'range',
    weather: calm(22),
    ladder: ladder(8, ['quo-c11', '10:30'], ['quo-c13', '9:00']),
  },
];
