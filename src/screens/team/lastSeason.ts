import type { SeasonSpan } from '../../golf/seasonSpan.ts';

/** First month of a school year, 1 to 12. Common practice in North America, no source. */
const FIRST_MONTH = 8;

/** The school year that was over last on a day: 1 August to 31 July. @param today `YYYY-MM-DD`. */
export function lastSeason(today: string): SeasonSpan {
  const [year, month] = today.split('-').map(Number);
  const ended = month >= FIRST_MONTH ? year : year - 1;
  return { from: `${ended - 1}-08-01`, to: `${ended}-07-31` };
}
