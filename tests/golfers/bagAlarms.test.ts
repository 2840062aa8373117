import { expect, test } from 'vitest';
import { bagReport } from '../../src/book/bagReport.ts';
import { fitBook } from '../../src/book/fitBook.ts';
import { METRES_PER_YARD } from '../../src/units/yards.ts';
import { makeGolfer } from './golfer.ts';
import { cellKey } from './trueCells.ts';
import { base } from './worlds.ts';

const GOLFERS = 100;

test('on 100 synthetic golfers, at most 5 % of sound gaps are called an overlap or wide, and real ones are found', () => {
  const sound = { gaps: 0, alarms: 0 };
  const overlaps = { gaps: 0, told: 0 };
  const wides = { gaps: 0, told: 0 };
  const same = { changes: 0, alarms: 0 };
  for (let seed = 1; seed <= GOLFERS; seed++) {
    const { logbook, asOf, cells } = makeGolfer(base, seed);
    const book = fitBook(logbook, asOf);
    const stockOf = (clubId: string) => {
      const cell = book.cells.find((one) => one.clubId === clubId && one.current && one.swing === 'full');
      const truth = cells.get(cellKey(clubId, cell?.specId ?? '', 'full'));
      if (!truth) throw new RangeError(`no truth for ${clubId}`);
      return truth.stock_m / METRES_PER_YARD;
    };
    const { gaps, changes } = bagReport(logbook, book);
    for (const { longer, shorter, verdict } of gaps) {
      const gap = stockOf(longer) - stockOf(shorter);
      const wide = Math.max(15, 0.12 * stockOf(longer));
      // A sound gap stands clear of both thresholds by 2 yd: nobody can tell 4.9 yd from 5.1.
      if (gap >= 7 && gap <= wide - 2) {
        sound.gaps++;
        if (verdict === 'overlap' || verdict === 'wide gap') sound.alarms++;
      } else if (gap < 2) {
        overlaps.gaps++;
        if (verdict === 'overlap' || verdict === "can't tell yet") overlaps.told++;
      } else if (gap > wide + 3) {
        wides.gaps++;
        if (verdict === 'wide gap' || verdict === 'possibly wide') wides.told++;
      }
    }
    for (const change of changes) {
      const before = cells.get(cellKey(change.clubId, change.beforeSpecId, change.swing));
      const after = cells.get(cellKey(change.clubId, change.afterSpecId, change.swing));
      if (!before || !after) continue;
      const truth = (after.stock_m - before.stock_m) / METRES_PER_YARD;
      same.changes++;
      if ((change.verdict === 'longer' && truth < 0) || (change.verdict === 'shorter' && truth > 0)) same.alarms++;
    }
  }
  expect(sound.gaps).toBeGreaterThan(300);
  expect(sound.alarms / sound.gaps).toBeLessThanOrEqual(0.05);
  expect(overlaps.gaps).toBeGreaterThan(20);
  expect(overlaps.told / overlaps.gaps).toBeGreaterThan(0.6);
  expect(wides.gaps).toBeGreaterThan(50);
  expect(wides.told / wides.gaps).toBeGreaterThan(0.7);
  expect(same.changes).toBeGreaterThan(8);
  expect(same.alarms / same.changes).toBeLessThanOrEqual(0.05);
});
