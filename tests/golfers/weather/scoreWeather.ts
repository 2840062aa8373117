import type { Book } from '../../../src/book/book.ts';
import { METRES_PER_YARD } from '../../../src/units/yards.ts';
import type { ComposeBook } from '../score.ts';
import { cellKey, type TrueCell } from '../trueCells.ts';
import type { Setting } from './settings.ts';
import { makeWeatherGolfer, type WeatherGolfer } from './weatherGolfer.ts';

/** How near a way of reading the same shots comes to the true stock carries. */
export interface Nearness {
  readonly rmse_yd: number;
  /** Mean of ln(answer ÷ truth). */
  readonly bias: number;
  /** Share of 80 % intervals that hold the true stock carry. */
  readonly coverage: number;
  readonly width_yd: number;
}

export interface WeatherScore {
  readonly setting: string;
  readonly golfers: number;
  readonly cells: number;
  readonly off: Nearness;
  readonly on: Nearness;
  readonly perfect: Nearness;
  /** Share of the way from off to perfect that on has come. */
  readonly wonBack: number;
  /** Shots left out for their weather, as a share of all. */
  readonly leftOut: number;
  readonly unanswered: number;
}

interface Row {
  readonly error_yd: number;
  readonly error: number;
  readonly inside: boolean;
  readonly width_yd: number;
}

const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;

function nearness(rows: readonly Row[]): Nearness {
  return {
    rmse_yd: Math.sqrt(mean(rows.map((row) => row.error_yd ** 2))),
    bias: mean(rows.map((row) => row.error)),
    coverage: mean(rows.map((row) => (row.inside ? 1 : 0))),
    width_yd: mean(rows.map((row) => row.width_yd)),
  };
}

/** The cells with shots of their own, truth against the book's answer; null where the book has none. */
function rowsOf(cells: readonly [string, TrueCell][], book: Book): (Row | null)[] {
  const answers = new Map(book.cells.map((cell) => [cellKey(cell.clubId, cell.specId, cell.swing), cell]));
  return cells.map(([key, truth]) => {
    const answer = answers.get(key);
    if (!answer || !Number.isFinite(answer.stock_m)) return null;
    return {
      error_yd: (answer.stock_m - truth.stock_m) / METRES_PER_YARD,
      error: Math.log(answer.stock_m / truth.stock_m),
      inside: answer.lo80_m <= truth.stock_m && truth.stock_m <= answer.hi80_m,
      width_yd: (answer.hi80_m - answer.lo80_m) / METRES_PER_YARD,
    };
  });
}

/**
 * How well the engine knows golfers whose shots flew through weather: not told of it, told as a golfer
 * notes it, and with the very same balls flown in standard air.
 *
 * @param golfers how many, seeds `firstSeed` and on. @param each called with every golfer, for more of the same.
 */
export function scoreWeather(
  setting: Setting,
  golfers: number,
  composeBook: ComposeBook,
  firstSeed = 1,
  each: (golfer: WeatherGolfer) => void = () => undefined,
): WeatherScore {
  const rows = { off: [] as Row[], on: [] as Row[], perfect: [] as Row[] };
  let unanswered = 0;
  let leftOut = 0;
  let shots = 0;
  for (let seed = firstSeed; seed < firstSeed + golfers; seed++) {
    const made = makeWeatherGolfer(setting, seed);
    const { golfer, noted, unnoted, perfect } = made;
    const cells = [...golfer.cells].filter(([, { measured_m }]) => measured_m.length > 0);
    const on = composeBook(noted, golfer.asOf);
    const off = composeBook(unnoted, golfer.asOf);
    shots += noted.shots.length;
    leftOut += on.leftOut.length - off.leftOut.length;
    for (const [name, book] of Object.entries({ on, off, perfect: composeBook(perfect, golfer.asOf) })) {
      for (const row of rowsOf(cells, book)) {
        if (row) rows[name as keyof typeof rows].push(row);
        else unanswered++;
      }
    }
    each(made);
  }
  const off = nearness(rows.off);
  const on = nearness(rows.on);
  const perfect = nearness(rows.perfect);
  return {
    setting: setting.world.name,
    golfers,
    cells: rows.on.length,
    off,
    on,
    perfect,
    wonBack: (off.rmse_yd - on.rmse_yd) / (off.rmse_yd - perfect.rmse_yd),
    leftOut: leftOut / shots,
    unanswered,
  };
}
