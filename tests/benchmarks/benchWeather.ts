import { composeBook } from '../../src/book/composeBook.ts';
import { airDensity } from '../../src/flight/air.ts';
import type { FlightConditions } from '../../src/flight/flightConditions.ts';
import { launchFor } from '../../src/flight/launch.ts';
import { standardise, standardiser } from '../../src/flight/standardise.ts';
import { fly } from '../../src/flight/trajectory.ts';
import { windFromClock } from '../../src/flight/wind.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { celsius } from '../../src/units/celsius.ts';
import { degrees } from '../../src/units/degrees.ts';
import { metres } from '../../src/units/metres.ts';
import { metresPerSecond } from '../../src/units/metresPerSecond.ts';

const ADJUSTMENTS = 2000;
const RUNS = 15;
const WARM_UP = 5;
const ADJUSTMENT_BUDGET_us = 50;
const SEASON_BUDGET_ms = 600;

function median_ms(run: (n: number) => void): number {
  for (let i = 0; i < WARM_UP; i++) run(i);
  const times = Array.from({ length: RUNS }, (_, i) => {
    const since = performance.now();
    run(WARM_UP + i);
    return performance.now() - since;
  });
  return times.sort((a, b) => a - b)[RUNS >> 1];
}

/** Winds and rises all different, as a careful golfer would note them: no answer serves twice. */
function conditionsOf(k: number, air: number): FlightConditions {
  const wind = windFromClock((k % 120) / 10, metresPerSecond(1 + (k % 37) / 6), metres(2));
  return { kind: 'conditions', density: air, wind: { kind: 'known', wind }, assumed: [] };
}

/** One adjustment of a ready launch, against the one flight that it cannot do without. */
function benchAdjustment(): string {
  const launch = launchFor({ kind: 'iron', loft_deg: degrees(34), height: null }, metres(137));
  if (launch.kind !== 'launch') throw new RangeError(launch.why);
  const ready = standardiser(launch);
  const density = airDensity({ temperature_C: celsius(8), humidity_pct: null, pressure_hPa: null, altitude_m: null });
  const winds = Array.from({ length: ADJUSTMENTS }, (_, k) => conditionsOf(k, density));
  let adjusted = 0;
  const cost_ms = median_ms(() => {
    for (const one of winds) if (standardise(ready, one, 0).kind === 'adjusted') adjusted++;
  });
  let metresFlown = 0;
  const floor_ms = median_ms(() => {
    for (const { density: air, wind } of winds) {
      const flight = fly(launch.launch, {
        density: air,
        wind: wind.kind === 'known' ? wind.wind : windFromClock(0, metresPerSecond(0), metres(2)),
      });
      if (flight.kind === 'landed') metresFlown += flight.carry_m;
    }
  });
  const us = (ms: number) => ((1000 * ms) / ADJUSTMENTS).toFixed(1);
  if (adjusted === 0 || !(metresFlown > 0)) throw new RangeError('nothing was adjusted');
  return `One adjustment for wind and air, launch ready
  cost    ${us(cost_ms)} µs (median of ${RUNS} times ${ADJUSTMENTS}; budget ${ADJUSTMENT_BUDGET_us} µs)
  floor   ${us(floor_ms)} µs (one flight)
  ratio   ${(cost_ms / floor_ms).toFixed(1)}`;
}

/** The same shots with weather on each, and another tenth of a degree every time, so that no answer is kept. */
function inWeather(logbook: Logbook, n: number): Logbook {
  return {
    ...logbook,
    rounds: logbook.rounds.map((round, i) => ({
      ...round,
      conditions: { ...round.conditions, temperature_C: celsius(4 + (i % 25) + n / 100) },
    })),
    shots: logbook.shots.map((shot, k) => ({
      ...shot,
      wind: {
        from_clock: (k * 7) % 12,
        mps: metresPerSecond(1 + (k % 31) / 6),
        reference_m: metres(2),
        how: 'felt' as const,
      },
    })),
  };
}

/** A whole season brought to standard conditions and fitted, against the same season without any weather. */
function benchSeason(logbook: Logbook, asOf: string): string {
  const seasons = Array.from({ length: WARM_UP + RUNS }, (_, n) => inWeather(logbook, n));
  let cells = 0;
  const cost_ms = median_ms((n) => {
    cells += composeBook(seasons[n], asOf).cells.length;
  });
  const again_ms = median_ms(() => {
    cells += composeBook(seasons[seasons.length - 1], asOf).cells.length;
  });
  const floor_ms = median_ms(() => {
    cells += composeBook(logbook, asOf).cells.length;
  });
  if (cells === 0) throw new RangeError('no book was made');
  return `One book in weather: ${logbook.shots.length} shots, each with its own wind
  cost    ${cost_ms.toFixed(1)} ms (never seen before; budget ${SEASON_BUDGET_ms} ms), ${again_ms.toFixed(1)} ms the second time
  floor   ${floor_ms.toFixed(1)} ms (the same shots, no weather noted)
  ratio   ${(cost_ms / floor_ms).toFixed(1)}, ${(again_ms / floor_ms).toFixed(1)} the second time`;
}

/** What weather costs: lines to print, each beside a floor that it cannot go under. */
export function benchWeather(logbook: Logbook, asOf: string): string {
  return `${benchAdjustment()}\n${benchSeason(logbook, asOf)}`;
}
