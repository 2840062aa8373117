import type { ClubKind } from '../src/golf/club.ts';

/** A club as built from a day on, and what it truly carries in yards at each swing (solid, standard conditions). */
export interface DemoSpec {
  readonly from: string;
  readonly loft_deg: number;
  readonly note: string;
  readonly carry_yd: Readonly<Record<string, number>>;
}

export interface DemoClub {
  readonly id: string;
  readonly kind: ClubKind;
  readonly name: string;
  readonly inBag: boolean;
  readonly claimed_yd: number | null;
  readonly notPlayed: readonly string[];
  /** Swings this golfer plays on the course with it; the other cells stay empty. */
  readonly plays: readonly string[];
  readonly specs: readonly DemoSpec[];
}

/** One invented golfer: the bag with its true carries, and how well it is swung. */
export interface Golfer {
  readonly id: string;
  readonly name: string;
  readonly hand: 'right' | 'left';
  readonly device: string;
  /** SD of ln carry of a solid full swing. */
  readonly sigma: number;
  /** Share of mishits. */
  readonly mishits: number;
  /** SD of offline ÷ carry of a solid strike. */
  readonly offline: number;
  /** Putt length that is holed every second time, m. */
  readonly evenPutt_m: number;
  /** Growth of every carry from the first round to the last, as a share: a senior grows stronger. */
  readonly growth: number;
  readonly clubs: readonly DemoClub[];
}

const SEASON_START = '2026-03-01';

type Carries = number | Readonly<Record<string, number>>;

interface Extra {
  inBag?: boolean;
  claimed_yd?: number;
  notPlayed?: string[];
  plays?: string[];
  /** A later build of the same club. */
  rebuilt?: { from: string; loft_deg: number; note: string; carry: Carries };
}

function carries(value: Carries): Readonly<Record<string, number>> {
  return typeof value === 'number' ? { full: value } : value;
}

function club(id: string, kind: ClubKind, name: string, loft_deg: number, carry: Carries, extra: Extra = {}): DemoClub {
  const specs: DemoSpec[] = [{ from: SEASON_START, loft_deg, note: '', carry_yd: carries(carry) }];
  const { rebuilt } = extra;
  if (rebuilt) {
    const { from, loft_deg: bent_deg, note } = rebuilt;
    specs.push({ from, loft_deg: bent_deg, note, carry_yd: carries(rebuilt.carry) });
  }
  return {
    id,
    kind,
    name,
    inBag: extra.inBag ?? true,
    claimed_yd: extra.claimed_yd ?? null,
    notPlayed: extra.notPlayed ?? [],
    plays: extra.plays ?? (kind === 'putter' ? [] : ['full']),
    specs,
  };
}

const wedge = (full: number, long: number, half: number, short: number) => ({
  full,
  '10:30': long,
  '9:00': half,
  '7:30': short,
});

/**
 * An invented senior of an invented school team. 5 wood and 3 hybrid are the same distance; between
 * 4 hybrid and 6 iron there is nothing; the 54° is bent strong on 12 May to close the step to the 50°.
 */
export const player: Golfer = {
  id: 'demo-player-tibbern',
  name: 'Tibbern',
  hand: 'right',
  device: 'demo-phone-1',
  sigma: 0.042,
  mishits: 0.18,
  offline: 0.074,
  evenPutt_m: 1.9,
  growth: 0.012,
  clubs: [
    club('tib-c01', 'driver', 'Driver', 10.5, 231, { claimed_yd: 245 }),
    club('tib-c02', 'fairway wood', '3 wood', 15, 212),
    club('tib-c03', 'fairway wood', '5 wood', 18.5, 200),
    club('tib-c04', 'hybrid', '3 hybrid', 19.5, 199),
    club('tib-c05', 'hybrid', '4 hybrid', 22.5, 189),
    club('tib-c06', 'iron', '5 iron', 25.5, 170, { inBag: false }),
    club('tib-c07', 'iron', '6 iron', 29, 159),
    club('tib-c08', 'iron', '7 iron', 33, 149, { claimed_yd: 155 }),
    club('tib-c09', 'iron', '8 iron', 37, { full: 138, '9:00': 105 }, { plays: ['full', '9:00'] }),
    club('tib-c10', 'iron', '9 iron', 41, 126),
    club('tib-c11', 'wedge', 'PW', 45.5, wedge(114, 100, 85, 64), { plays: ['full', '10:30'] }),
    club('tib-c12', 'wedge', '50°', 50, wedge(103, 90, 76, 57), { plays: ['full', '10:30', '9:00'] }),
    club('tib-c13', 'wedge', '54°', 54, wedge(89, 78, 66, 50), {
      claimed_yd: 95,
      plays: ['full', '10:30', '9:00', '7:30'],
      rebuilt: {
        from: '2026-05-12',
        loft_deg: 52,
        note: 'bent 2° strong: the step to the 50° was too wide',
        carry: wedge(95, 83, 70, 53),
      },
    }),
    club('tib-c14', 'wedge', '58°', 58, wedge(78, 67, 57, 43), {
      notPlayed: ['full'],
      plays: ['10:30', '9:00', '7:30'],
    }),
    club('tib-c15', 'putter', 'Putter', 3, {}),
  ],
};

/**
 * The invented coach, who keeps a logbook too and plays left-handed. Driving iron and 3 hybrid are
 * the same distance; from PW to 54° is a long way; the driver gets a new shaft on 25 May.
 */
export const coach: Golfer = {
  id: 'demo-coach-quorrel',
  name: 'Quorrel',
  hand: 'left',
  device: 'demo-phone-2',
  sigma: 0.036,
  mishits: 0.145,
  offline: 0.07,
  evenPutt_m: 1.9,
  growth: 0,
  clubs: [
    club('quo-c01', 'driver', 'Driver', 9.5, 249, {
      claimed_yd: 255,
      rebuilt: { from: '2026-05-25', loft_deg: 9.5, note: 'new shaft, 5 g lighter', carry: 253 },
    }),
    club('quo-c02', 'fairway wood', '3 wood', 15, 231),
    club('quo-c03', 'driving iron', 'Driving iron', 18, 213),
    club('quo-c04', 'hybrid', '3 hybrid', 20, 212),
    club('quo-c05', 'iron', '4 iron', 22.5, 200),
    club('quo-c06', 'iron', '5 iron', 25, 189),
    club('quo-c07', 'iron', '6 iron', 28, 178),
    club('quo-c08', 'iron', '7 iron', 32, 167, { claimed_yd: 168 }),
    club('quo-c09', 'iron', '8 iron', 36, 155),
    club('quo-c10', 'iron', '9 iron', 40.5, 142),
    club('quo-c11', 'wedge', 'PW', 45, wedge(129, 112, 93, 70), { plays: ['full', '10:30', '9:00'] }),
    club('quo-c12', 'wedge', '54°', 54, wedge(103, 89, 74, 55), { plays: ['full', '10:30', '9:00', '7:30'] }),
    club('quo-c13', 'wedge', '60°', 60, wedge(84, 72, 60, 45), { plays: ['full', '9:00', '7:30'] }),
    club('quo-c14', 'putter', 'Putter', 3, {}),
  ],
};

/** The id of a club's n-th spec period, counted from 0. */
export function specId(club: DemoClub, index: number): string {
  return `${club.id}${'ab'[index]}`;
}

/** Which spec period of a club holds on a day: the last that began by then. */
export function specIndexOn(club: DemoClub, date: string): number {
  let found = 0;
  club.specs.forEach((spec, index) => {
    if (spec.from <= date) found = index;
  });
  return found;
}
