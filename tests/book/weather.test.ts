import { describe, expect, test } from 'vitest';
import { composeBook } from '../../src/book/composeBook.ts';
import { airDensity, STANDARD_DENSITY } from '../../src/flight/air.ts';
import { type DragAndLift, MODERN_BALL } from '../../src/flight/dragAndLift.ts';
import { launchFor } from '../../src/flight/launch.ts';
import { fly } from '../../src/flight/trajectory.ts';
import { CALM, windFromClock } from '../../src/flight/wind.ts';
import type { Shot } from '../../src/golf/shot.ts';
import { degrees } from '../../src/units/degrees.ts';
import { metres } from '../../src/units/metres.ts';
import { metresPerSecond } from '../../src/units/metresPerSecond.ts';
import { randomNumbers } from '../golfers/randomNumbers.ts';
import { AS_OF, carried, cellIn, logbookOf, roundOf, solidShots } from './logbooks.ts';

/** Another ball than the model's: 12 % less drag, 10 % more lift. The truth of these tests, invented. */
const OTHER_BALL: DragAndLift = {
  drag: (spin) => 0.88 * MODERN_BALL.drag(spin),
  lift: (spin) => 1.1 * MODERN_BALL.lift(spin),
};

const clubs = [
  { id: 'i5', loft: 27, stock: 152 },
  { id: 'i7', loft: 34, stock: 132 },
  { id: 'i9', loft: 42, stock: 110 },
] as const;

/** Three rounds in a cold wind: where it blows from changes, mostly into the face. */
const spring = { temperature_C: 4, pressure_hPa: 1013.25, humidity_pct: 60 };
const rounds = ['r1', 'r2', 'r3'].map((id, i) => roundOf(id, `2026-04-0${i + 1}`, { conditions: spring }));

function carriesOfTruth(loft: number, stock: number) {
  const found = launchFor({ kind: 'iron', loft_deg: degrees(loft), height: null }, metres(stock));
  if (found.kind !== 'launch') throw new RangeError(found.why);
  const density = airDensity(rounds[0].conditions);
  const carry = (air: number, clock: number | null, mps: number) => {
    const wind = clock === null ? CALM : windFromClock(clock, metresPerSecond(mps), metres(2));
    const flight = fly(found.launch, { density: air, wind }, 0, OTHER_BALL);
    if (flight.kind !== 'landed') throw new RangeError(flight.why);
    return flight.carry_m;
  };
  const standard = carry(STANDARD_DENSITY, null, 0);
  // The golfer's stock carry with this ball, and what a wind makes of it.
  return { standard, inWind: (clock: number, mps: number) => carry(density, clock, mps) };
}

function springSeason(noted: boolean): { shots: Shot[]; truth: Map<string, number> } {
  const numbers = randomNumbers('spring');
  const truth = new Map<string, number>();
  const shots = clubs.flatMap(({ id, loft, stock }) => {
    const flights = carriesOfTruth(loft, stock);
    truth.set(id, flights.standard);
    return Array.from({ length: 15 }, (_, k) => {
      const clock = numbers.choice([11, 12, 1, 3, 9]);
      const mps = numbers.between(3, 6);
      const m = flights.inWind(clock, mps) * Math.exp(numbers.normal(0, 0.035));
      const wind = noted ? { from_clock: clock, mps: mps * numbers.between(0.85, 1.15), reference_m: 2 } : null;
      return carried(`${id}-${k}`, m, { clubId: id, roundId: `r${1 + (k % 3)}`, strike: 'solid', wind });
    });
  });
  return { shots, truth };
}

describe('a cold spring into the wind', () => {
  const still = rounds.map(({ id, date }) => roundOf(id, date));
  const withWeather = springSeason(true);
  const noted = composeBook(logbookOf({ rounds, shots: withWeather.shots }), AS_OF);
  const unnoted = composeBook(logbookOf({ rounds: still, shots: springSeason(false).shots }), AS_OF);
  const off = (book: typeof noted, id: string) => Math.log(cellIn(book, id).stock_m / (withWeather.truth.get(id) ?? 0));

  test('noted weather brings the numbers nearer to what the golfer carries in standard conditions', () => {
    for (const { id } of clubs) {
      expect(off(unnoted, id), id).toBeLessThan(-0.05);
      expect(Math.abs(off(noted, id)), id).toBeLessThan(0.5 * Math.abs(off(unnoted, id)));
    }
  });

  test('the interval says that the adjustment may be wrong', () => {
    const width = (book: typeof noted) => Math.log(cellIn(book, 'i7').hi80_m / cellIn(book, 'i7').lo80_m);
    expect(width(noted)).toBeGreaterThan(1.05 * width(unnoted));
  });
});

describe('three shots in one wind and air', () => {
  const bookIn = (conditions: object, wind: object | null) =>
    cellIn(
      composeBook(
        logbookOf({
          rounds: [roundOf('r1', '2026-05-02', { conditions })],
          shots: solidShots('i7', 130, 3, { roundId: 'r1', wind }),
        }),
        AS_OF,
      ),
      'i7',
    );
  const calm = bookIn({}, null);
  const into = bookIn({}, { from_clock: 12, mps: 5 });
  const down = bookIn({}, { from_clock: 6, mps: 5 });
  const width = (cell: typeof calm) => Math.log(cell.hi80_m / cell.lo80_m);

  test('into the wind they were worth more, down it less', () => {
    expect(into.stock_m / calm.stock_m).toBeGreaterThan(1.06);
    expect(down.stock_m / calm.stock_m).toBeLessThan(0.98);
    expect(bookIn({ temperature_C: 0 }, null).stock_m / calm.stock_m).toBeGreaterThan(1.005);
  });

  test('that the flight may be wrong about this golfer makes the number less sure, however many shots agree', () => {
    expect(width(into)).toBeGreaterThan(1.3 * width(calm));
    expect(width(bookIn({ altitude_m: 2000 }, null))).toBeGreaterThan(1.03 * width(calm));
  });
});

test('a shot uphill is worth more than it measured, downhill less', () => {
  const rising = (rise_m: number | null) =>
    cellIn(composeBook(logbookOf({ shots: solidShots('i7', 130, 10, { rise_m }) }), AS_OF), 'i7').stock_m;
  expect(rising(8)).toBeGreaterThan(rising(null) + 3);
  expect(rising(-8)).toBeLessThan(rising(null) - 3);
});

test('a round that notes pressure and altitude both is left out, and says why', () => {
  const conditions = { pressure_hPa: 850, altitude_m: 1500 };
  const book = composeBook(
    logbookOf({
      rounds: [roundOf('r1', '2026-05-02'), roundOf('r2', '2026-05-09', { conditions })],
      shots: [carried('a', 130), carried('b', 140, { roundId: 'r2' })],
    }),
    AS_OF,
  );
  expect(book.leftOut.map(({ shotId }) => shotId)).toEqual(['b']);
  expect(book.leftOut[0].why).toMatch(/pressure 850 hPa and altitude 1500 m are both noted/);
  expect(cellIn(book, 'i7').shotIds).toEqual(['a']);
});

test('a gale is beyond adjusting, and so is a green above the flight', () => {
  const shots = [
    carried('a', 130, { roundId: 'r2' }),
    carried('gale', 100, { wind: { from_clock: 12, mps: 20 } }),
    carried('cliff', 100, { roundId: 'r3', rise_m: 150 }),
  ];
  const book = composeBook(logbookOf({ shots }), AS_OF);
  expect(book.leftOut.map(({ shotId }) => shotId)).toEqual(['cliff', 'gale']);
  expect(book.leftOut[1].why).toMatch(/stronger than 25 mph/);
  expect(book.leftOut[0].why).toMatch(/out of this flight's reach/);
});
