import type { Logbook } from '../golf/logbook.ts';
import { type AimSheet, aimReport } from './aimReport.ts';
import { type BagSheet, bagReport } from './bagReport.ts';
import type { FittedBook } from './fitBook.ts';
import { type PracticeSheet, practiceReport } from './practiceReport.ts';
import { type PuttingSheet, puttingReport } from './puttingReport.ts';

/** What a golfer decides from a book: the bag, where to aim, what to practise, and how he putts. */
export interface PlanSheets {
  readonly bag: BagSheet;
  readonly aim: AimSheet;
  readonly practice: PracticeSheet;
  readonly putting: PuttingSheet;
}

/** All plan sheets of one fitted book, with the usual thresholds, green and risk. About half a second for a season. */
export function planSheets(logbook: Logbook, fitted: FittedBook): PlanSheets {
  return {
    bag: bagReport(logbook, fitted),
    aim: aimReport(fitted),
    practice: practiceReport(logbook, fitted),
    putting: puttingReport(logbook, fitted.asOf),
  };
}
