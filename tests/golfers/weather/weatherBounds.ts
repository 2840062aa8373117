import type { ForecastRow } from './scoreForecast.ts';
import type { WeatherScore } from './scoreWeather.ts';
import type { Setting } from './settings.ts';

/** Everything scored of one setting. */
export interface SettingScore extends WeatherScore {
  /** Probability of the true next ball between P10 and P90 of a card for a new day, and share of stock carries inside. */
  readonly nextBall: number;
  readonly newDayInside: number;
}

/** What must be reached. */
export interface WeatherBounds {
  readonly coverage: readonly [number, number];
  readonly nextBall: readonly [number, number];
  /** RMSE told of the weather ÷ RMSE not told, at most. */
  readonly worse: number;
  readonly wonBack: number | null;
}

/** With CARRYBOOK_PROVE=1 the full count. */
export const proving = (): boolean => process.env.CARRYBOOK_PROVE === '1';
export const weatherGolferCount = (): number => (proving() ? 400 : 30);

/**
 * The bounds of issue and design. A share won back is a difference of errors over another, and moves by about
 * ± .1 from one thirty golfers to the next: with thirty the share must come to within that of the bound.
 */
export function weatherBounds(setting: Setting, full: boolean): WeatherBounds {
  const { wonBack } = setting;
  return {
    coverage: full ? [0.76, 0.86] : [0.73, 0.89],
    nextBall: [0.74, 0.86],
    worse: 1.02,
    wonBack: wonBack === null || full ? wonBack : Math.round(10 * wonBack - 1) / 10,
  };
}

export function settingScore(score: WeatherScore, forecasts: readonly ForecastRow[]): SettingScore {
  const mean = (of: (row: ForecastRow) => number) =>
    forecasts.reduce((sum, row) => sum + of(row), 0) / forecasts.length;
  return { ...score, nextBall: mean((row) => row.nextBall), newDayInside: mean((row) => (row.inside ? 1 : 0)) };
}

/** The scores in a table of Markdown, one line a setting. */
export function weatherTable(scores: readonly SettingScore[]): string {
  const head = [
    'setting',
    'golfers',
    'cells',
    'stock carry, RMSE yd: weather not noted',
    'noted',
    'perfectly known',
    'won back',
    'in 80 % interval: not noted',
    'noted',
    'perfectly known',
    'left out',
    'next ball of a new day in P10–P90',
    'its stock carry in 80 % interval',
  ];
  const rows = scores.map(({ setting, golfers, cells, off, on, perfect, wonBack, leftOut, nextBall, newDayInside }) => [
    setting,
    golfers,
    cells,
    off.rmse_yd.toFixed(2),
    on.rmse_yd.toFixed(2),
    perfect.rmse_yd.toFixed(2),
    `${(100 * wonBack).toFixed(0)} %`,
    off.coverage.toFixed(3),
    on.coverage.toFixed(3),
    perfect.coverage.toFixed(3),
    `${(100 * leftOut).toFixed(1)} %`,
    nextBall.toFixed(3),
    newDayInside.toFixed(3),
  ]);
  const rule = head.map((_, i) => (i === 0 ? '---' : '---:'));
  return [head, rule, ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
}
