import { composeBook } from '../../../src/book/composeBook.ts';
import { type ForecastRow, scoreForecast } from './scoreForecast.ts';
import { scoreWeather } from './scoreWeather.ts';
import type { Setting } from './settings.ts';
import { type SettingScore, settingScore } from './weatherBounds.ts';

/** Both ways round: shots in weather to standard carries, and the book to a new day. */
export function scoreSetting(setting: Setting, golfers: number): SettingScore {
  const forecasts: ForecastRow[] = [];
  let seed = 0;
  const score = scoreWeather(setting, golfers, composeBook, 1, (golfer) => {
    seed++;
    forecasts.push(...scoreForecast(golfer, seed));
  });
  return settingScore(score, forecasts);
}
