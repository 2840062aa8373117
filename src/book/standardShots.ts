import { carryFromTotal, expectedRoll } from '../flight/roll.ts';
import type { Adjusted } from '../flight/standardise.ts';
import type { Logbook } from '../golf/logbook.ts';
import type { Degrees } from '../units/degrees.ts';
import { metres } from '../units/metres.ts';
import { type CarryModel, fitCarryModel, likelyCarries } from '../yardages/carryModel.ts';
import type { Claim, ShotEvidence } from '../yardages/evidence.ts';
import { adjustmentOf, hasConditions, type UsualWind, usualWinds } from './adjustments.ts';
import type { LeftOut } from './book.ts';
import { bookCells, type NamedCell } from './bookCells.ts';
import { type CountedShot, hasBounds, loftOf } from './countedShots.ts';
import { driftLoadings, type FoundCarry, foundCarry, shotEvidence } from './shotEvidence.ts';

/** All that a book rests on: the shots in standard conditions and what the carry model makes of them. */
export interface StandardShots {
  readonly counted: readonly CountedShot[];
  readonly cells: readonly NamedCell[];
  /** Cell of each counted shot. */
  readonly cellOf: readonly number[];
  /** Each counted shot in standard conditions from the reference lie. */
  readonly evidence: readonly ShotEvidence[];
  readonly model: CarryModel;
  /** Shots whose conditions are beyond adjusting. */
  readonly leftOut: readonly LeftOut[];
}

/**
 * How much of a roll's error is the golfer's own and the season's, the same for all his totals, as a
 * share of the roll. Own estimate; with each ball's own error it makes the 40 % of the roll model.
 */
const SHARED_ROLL_ERROR = 0.3;
/** Searches for stock carries at the most, and the change of ln carry below which another changes nothing. */
const MOST_PASSES = 3;
const SETTLED_LOG = 0.02;

/**
 * Brings a golfer's shots to standard conditions and fits the carry model to them.
 *
 * What weather and roll do to a shot depends on the stock carry of its cell, which is what the shots
 * are to tell: so the carries are fitted as measured first, the shots brought to standard with them,
 * and the carries fitted again until they move by less than 2 %, the step that launches are solved in.
 * Shots that cannot be adjusted are left out with the reason.
 */
export function standardShots(logbook: Logbook, counted: readonly CountedShot[], asOf: string): StandardShots {
  const winds = usualWinds(counted);
  const passes = counted.some((one) => hasConditions(one) || isTotalOnly(one)) ? MOST_PASSES : 0;
  let laid = layOut(logbook, counted, asOf, null);
  const leftOut: LeftOut[] = [];
  let stocks: ReadonlyMap<string, number> | null = null;
  for (let pass = 0; pass < passes; pass++) {
    const likely = likelyCarries(laid.cells, laid.evidence, laid.claims);
    const found = new Map(laid.cells.map((cell, i) => [stockKey(cell), Math.exp(likely[i])]));
    const moved = stocks
      ? Math.max(...[...found].map(([key, m]) => Math.abs(Math.log(m / (stocks?.get(key) ?? m)))))
      : 1;
    if (moved < SETTLED_LOG) break;
    stocks = found;
    leftOut.length = 0;
    laid = layOut(logbook, counted, asOf, { stocks, leftOut, winds });
  }
  const model = fitCarryModel(laid.cells, laid.evidence, laid.claims);
  const { evidence } = laid;
  return {
    counted: laid.counted,
    cells: laid.cells,
    cellOf: evidence.map(({ cell }) => cell),
    evidence,
    model,
    leftOut,
  };
}

const stockKey = (cell: { clubId: string; specId: string; swing: string }) =>
  `${cell.clubId}|${cell.specId}|${cell.swing}`;

const isTotalOnly = ({ shot }: CountedShot) => shot.total !== null && !shot.carry && !hasBounds(shot);

interface Laid {
  readonly counted: readonly CountedShot[];
  readonly cells: readonly NamedCell[];
  readonly evidence: readonly ShotEvidence[];
  readonly claims: readonly Claim[];
}

/** The stock carries that shots are adjusted with, and the list that takes those that cannot be. */
interface Known {
  readonly stocks: ReadonlyMap<string, number>;
  readonly leftOut: LeftOut[];
  readonly winds: ReadonlyMap<string, UsualWind>;
}

/** Lays the shots out as evidence; with `known` stock carries adjusted to standard conditions. */
function layOut(logbook: Logbook, counted: readonly CountedShot[], asOf: string, known: Known | null): Laid {
  const kept: CountedShot[] = [];
  const adjustments: (Adjusted | null)[] = [];
  const bearings = new Map<string, Degrees | null>();
  if (known) {
    for (const { id, holes } of logbook.rounds) {
      for (const hole of holes) bearings.set(`${id}|${hole.number}`, hole.bearing_deg);
    }
  }
  for (const one of counted) {
    const stock = known?.stocks.get(stockKey({ clubId: one.club.id, specId: one.specId, swing: one.shot.swing }));
    if (stock === undefined || !(hasConditions(one) || known?.winds.has(one.round.id))) {
      kept.push(one);
      adjustments.push(null);
      continue;
    }
    const bearing = bearings.get(`${one.round.id}|${one.shot.hole}`) ?? null;
    const adjustment = adjustmentOf(one, stock, bearing, known?.winds.get(one.round.id) ?? null);
    if (adjustment.kind === 'adjusted') {
      kept.push(one);
      adjustments.push(adjustment);
    } else {
      known?.leftOut.push({ shotId: one.shot.id, why: `${adjustment.kind}: ${adjustment.why}` });
    }
  }
  const used = kept.map(({ club, specId, shot }) => ({ clubId: club.id, specId, swing: shot.swing }));
  const named = bookCells(logbook, asOf, used);
  const days = new Map<string, number>();
  const drifts = new Map<string, ReturnType<typeof driftLoadings>>();
  const evidence = kept.map((one, k) => {
    const day = days.get(one.round.id) ?? days.size;
    days.set(one.round.id, day);
    const date = one.when.slice(0, 10);
    const drift = drifts.get(date) ?? driftLoadings(date, asOf);
    drifts.set(date, drift);
    const cell = named.find(one.club.id, one.specId, one.shot.swing);
    if (cell === undefined) throw new RangeError(`no cell for shot ${one.shot.id}`);
    const stock = known?.stocks.get(stockKey(named.cells[cell]));
    return shotEvidence(one, foundCarry(one.shot, reckonedFromTotal(one, stock)), cell, day, drift, adjustments[k]);
  });
  return { counted: kept, cells: named.cells, evidence, claims: claimsOf(logbook, named.cells) };
}

/**
 * The carry behind a total. With a known stock carry the ball is taken to run the same share of its
 * total as the stock shot does: solving the roll of each total by itself would read every short drive
 * as a slow, low one that ran far.
 */
export function reckonedFromTotal(counted: CountedShot, stock_m: number | undefined): (total_m: number) => FoundCarry {
  const { club, round } = counted;
  const { kind } = club;
  if (kind === 'putter') throw new RangeError(`club ${club.id} is a putter: it has no carry`);
  const { ground } = round.conditions;
  return (total_m) => {
    const loft = loftOf(counted);
    let { carry_m, sd_m } = carryFromTotal(kind, loft, metres(total_m), ground);
    if (stock_m !== undefined) {
      const roll = expectedRoll(kind, loft, metres(stock_m), ground);
      carry_m = metres((total_m * stock_m) / Math.max(stock_m * 0.5, stock_m + roll.roll_m));
      sd_m = roll.sd_m;
    }
    const shared = SHARED_ROLL_ERROR * Math.abs(total_m - carry_m);
    return {
      least_m: carry_m,
      most_m: carry_m,
      error_m: Math.sqrt(Math.max(1, sd_m ** 2 - shared ** 2)),
      rollLoading: shared / Math.max(1, carry_m),
    };
  };
}

function claimsOf(logbook: Logbook, cells: readonly NamedCell[]): Claim[] {
  return logbook.clubs.flatMap((club) => {
    const cell = cells.findIndex((one) => one.clubId === club.id && one.swing === 'full');
    return club.claimed_m === null || cell < 0 ? [] : [{ cell, logCarry: Math.log(club.claimed_m) }];
  });
}
