import { describe, expect, test } from 'vitest';
import { EXPORTED_AT, playerFile } from '../../demo/logbooks.ts';
import { bookOf } from '../../src/book/composeBook.ts';
import { fitBook } from '../../src/book/fitBook.ts';
import { planSheets } from '../../src/book/planSheets.ts';
import { reportJson } from '../../src/book/reportJson.ts';
import { reportText } from '../../src/book/reportText.ts';
import { logbookOf } from '../../src/exchange/carrybookFile.ts';
import { yardsFromMetres } from '../../src/units/yards.ts';

const logbook = logbookOf(playerFile());
const fitted = fitBook(logbook, EXPORTED_AT);
const book = bookOf(fitted);
const sheets = planSheets(logbook, fitted);
const yards = { unit: 'yards', of: yardsFromMetres };

describe('bag, aim, practice and putting in the report', () => {
  const text = reportText(logbook, book, yards, sheets);

  test('stand after the book, which stays as it was', () => {
    const alone = reportText(logbook, book, yards);
    expect(text.startsWith(alone)).toBe(true);
    const titles = text
      .slice(alone.length)
      .split('\n')
      .filter((line) => /^\w/.test(line));
    expect(titles.map((title) => title.replace(/[:,(].*$/, '').trim())).toEqual([
      ...Array.from({ length: 5 }, () => 'Bag'),
      'Aim',
      ...Array.from({ length: 3 }, () => 'Practice'),
      'Putting',
    ]);
  });

  test('tell the change of build, the gaps beside the lofts and what settles them', () => {
    expect(text).toMatch(/\n {2}54° full +2026-05-12 +−2\.0° +\d+ \(\d+\) +\d+ \(\d+\) +\+\d .* longer\n/);
    expect(text).toMatch(/\n {2}4 hybrid – 6 iron +6\.5° +2\d +wide gap +\d+ and \d+ +–\n/);
    expect(text).toMatch(/\n {2}\S.* can't tell yet +\d+ and \d+ +(?:about \d+|more than 60) shots\n/);
  });

  test('have a row for every swing that can be aimed, and the best bag by name', () => {
    for (const { clubId, swing } of sheets.aim.rows) {
      const name = logbook.clubs.find(({ id }) => id === clubId)?.name;
      expect(text).toMatch(new RegExp(`\\n {2}${name} ${swing} +\\d+ +\\d+ +× 1\\.\\d\\d +\\d+ +\\d+ %`));
    }
    expect(text).toMatch(
      /\n {2}Driver, 3 wood, .*58°\n {2}leave \d\.\d\d; \d+ within a tenth of a yard; proven over 13 bags\n/,
    );
    expect(text).toMatch(/against the bag as it is: better \(leaves −0\.\d\d ± 0\.\d\d\)/);
  });

  test('tell the putts with the angle and its interval, in the golfer’s unit', () => {
    expect(text).toMatch(/\n {2}\d+ putts of known length on \d+ holes; angle 1\.\d\d° \(1\.\d\d to \d\.\d\d\)\n/);
    expect(text).toContain('length, yards');
    const metric = reportText(logbook, book, { unit: 'metres', of: (length) => length }, sheets);
    expect(metric).toContain('length, metres');
    expect(metric).toMatch(/\n {2}1\.0 to 2\.0 +\d+ %/);
  });

  test('and for programs, each under its own key after those of the book', () => {
    const { players } = reportJson(EXPORTED_AT, [{ playerId: 'p', book, sheets }]);
    const keys = Object.keys(players[0]);
    expect(keys).toEqual(['player', 'cells', 'gaps', 'leftOut', 'bag', 'aim', 'practice', 'putting']);
    // Nothing in it is lost on the way through text: no NaN, no Infinity, no undefined.
    expect(JSON.parse(JSON.stringify(players[0].bag))).toEqual(sheets.bag);
    expect(JSON.parse(JSON.stringify(players[0].aim))).toEqual(sheets.aim);
    expect(JSON.parse(JSON.stringify(players[0].practice))).toEqual(sheets.practice);
    expect(JSON.parse(JSON.stringify(players[0].putting))).toEqual(sheets.putting);
  });
});
