import { describe, expect, test } from 'vitest';
import { coachFile, EXPORTED_AT, playerFile } from '../../demo/logbooks.ts';
import { bagChoice, bagGround, finished } from '../../src/book/bagChoice.ts';
import { bagReport } from '../../src/book/bagReport.ts';
import { fitBook } from '../../src/book/fitBook.ts';
import { added, bent, imaginedBook, replaced } from '../../src/book/imaginedBook.ts';
import { whatIf } from '../../src/book/whatIf.ts';
import { logbookOf as logbookOfFile } from '../../src/exchange/carrybookFile.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { degrees } from '../../src/units/degrees.ts';
import { randomNumbers } from '../golfers/randomNumbers.ts';
import { AS_OF, carried, clubOf, logbookOf, ROUNDS } from './logbooks.ts';

const player = logbookOfFile(playerFile());
const coach = logbookOfFile(coachFile());
const playerBook = fitBook(player, EXPORTED_AT);
const coachBook = fitBook(coach, EXPORTED_AT);
const clubOfPlayer = (id: string) => {
  const club = player.clubs.find((one) => one.id === id);
  if (!club) throw new RangeError(`no club ${id}`);
  return club;
};

describe('the bag of the demo season', () => {
  const sheet = bagReport(player, playerBook);
  const gapOf = (longer: string, shorter: string) =>
    sheet.gaps.find((gap) => [longer, shorter].includes(gap.longer) && [longer, shorter].includes(gap.shorter));

  test('shows the planted overlap and wide gap with the lofts beside them', () => {
    expect(gapOf('tib-c03', 'tib-c04')).toMatchObject({ verdict: 'overlap', loftGap_deg: 1 });
    expect(gapOf('tib-c05', 'tib-c07')).toMatchObject({ verdict: 'wide gap', loftGap_deg: 6.5 });
    const wide = bagReport(coach, coachBook).gaps.find(({ longer }) => longer === 'quo-c11');
    expect(wide).toMatchObject({ shorter: 'quo-c12', verdict: 'wide gap', loftGap_deg: 9 });
  });

  test('shows what bending the 54° did, at every swing, with the truth inside', () => {
    // Planted: 89 → 95, 78 → 83, 66 → 70, 50 → 53 yd (demo/people.ts).
    expect(sheet.changes.map(({ swing }) => swing)).toEqual(['full', '10:30', '9:00', '7:30']);
    const truth = [6, 5, 4, 3];
    sheet.changes.forEach((change, k) => {
      expect(change).toMatchObject({ clubId: 'tib-c13', from: '2026-05-12', loftChange_deg: -2, verdict: 'longer' });
      expect(change.shotsBefore).toBeGreaterThan(0);
      expect(change.lo80_m / 0.9144).toBeLessThan(truth[k] + 1);
      expect(change.hi80_m / 0.9144).toBeGreaterThan(truth[k] - 1);
    });
  });

  test('tells an unsettled gap how many more shots it needs, a settled one none', () => {
    for (const { verdict, settling } of sheet.gaps) {
      expect(settling.kind === 'settled').toBe(verdict !== "can't tell yet" && verdict !== 'possibly wide');
    }
    expect(sheet.gaps.some(({ settling }) => settling.kind !== 'settled')).toBe(true);
  });

  test('covers the distances of all rounds and of each tee', () => {
    expect(sheet.coverage.map(({ tees }) => tees)).toEqual([null, 'back', 'forward']);
    const [all, back, forward] = sheet.coverage;
    expect(all.approaches).toBe(back.approaches + forward.approaches);
    for (const { curve, leave_m } of sheet.coverage) {
      const sum = curve.reduce((total, point) => total + point.weight * point.leave_m, 0);
      expect(sum).toBeCloseTo(leave_m, 9);
    }
    const from150 = all.curve.find(({ distance_m }) => distance_m >= 149 * 0.9144);
    expect(from150).toMatchObject({ clubId: 'tib-c08', swing: 'full' });
  });

  test('finds that the 5 iron left at home belongs in for one of the two of a length', () => {
    const { best } = sheet;
    if (!best?.againstPresent) throw new Error('no best bag');
    expect(best.best.ids).toContain('tib-c06');
    expect(best.best.ids.includes('tib-c03') && best.best.ids.includes('tib-c04')).toBe(false);
    expect(best.againstPresent.verdict).toBe('better');
    expect(best.againstPresent.gain_m).toBeGreaterThan(2 * best.againstPresent.deviation_m);
    expect(best.best.ids).toHaveLength(13);
    expect(best.proven).toBe(true);
  });

  test('compares one more swing with one more club, each with its standard deviation', () => {
    const { swing, club, swingOverClub } = sheet.swingOrClub;
    if (!swing || !club || !swingOverClub) throw new Error('nothing to compare');
    expect(club).toMatchObject({ kind: 'iron', difference: { verdict: 'better' } });
    expect(swing.difference.verdict).toBe('no real difference');
    expect(swingOverClub.verdict).toBe('worse');
    expect(swingOverClub.gain_m).toBeCloseTo(swing.difference.gain_m - club.difference.gain_m, 6);
  });

  test('does not depend on the order of the records', () => {
    const turned: Logbook = {
      ...player,
      clubs: player.clubs.toReversed(),
      rounds: player.rounds.toReversed(),
      shots: player.shots.toReversed(),
    };
    const other = bagReport(turned, fitBook(turned, EXPORTED_AT));
    expect(other.best?.best.ids).toEqual(sheet.best?.best.ids);
    expect(other.gaps).toEqual(sheet.gaps);
    expect(other.coverage).toEqual(sheet.coverage);
  });
});

describe('what if', () => {
  test('a club for the wide gap helps, one more beside a twin does not, and real numbers stay', () => {
    const ideas = [added('iron', degrees(25.5)), replaced(clubOfPlayer('tib-c03'), 'hybrid', degrees(19.5))];
    const [iron, twin] = whatIf(player, playerBook, ideas);
    expect(iron.difference.verdict).toBe('better');
    expect(iron.fromLonger?.clubId).toBe('tib-c05');
    expect(iron.toShorter?.clubId).toBe('tib-c07');
    expect(twin.difference.verdict).toBe('no real difference');
    for (const { stock_m, lo80_m, hi80_m } of iron.swings) {
      expect(lo80_m).toBeLessThan(stock_m);
      expect(hi80_m).toBeGreaterThan(stock_m);
    }
    // The 5 iron at home has no shots: what is imagined of it must hold its true 170 yd (demo/people.ts).
    expect(iron.swings[0].lo80_m / 0.9144).toBeLessThan(170);
    expect(iron.swings[0].hi80_m / 0.9144).toBeGreaterThan(170);
  });

  test('bending is surer than another club; a wedge comes with its partial swings', () => {
    const wedge = clubOfPlayer('tib-c13');
    const [turned, other] = whatIf(player, playerBook, [bent(wedge, degrees(53)), added('wedge', degrees(53))]);
    expect(turned.swings.map(({ swing }) => swing)).toEqual(['full', '7:30', '9:00', '10:30']);
    const width = ({ swings: [full] }: typeof turned) => full.hi80_m - full.lo80_m;
    expect(width(turned)).toBeLessThan(width(other));
  });

  test('no number of a real club changes', () => {
    const wider = imaginedBook(playerBook, [added('hybrid', degrees(25))]);
    playerBook.theta.forEach((theta, i) => {
      expect(wider.theta[i]).toBe(theta);
    });
    expect(() => imaginedBook(playerBook, [{ ...added('iron', degrees(30)), id: 'tib-c07' }])).toThrow(/is there/);
    expect(() => bent(clubOfPlayer('tib-c15'), degrees(4))).toThrow(/putter/);
  });

  test('a club is judged as it is built now', () => {
    const { candidates, fitted } = bagGround(player, playerBook, { imagined: [], locked: [], tees: null });
    const wedge = candidates.find(({ id }) => id === 'tib-c13');
    expect(wedge?.cells.map((cell) => fitted.cells[cell].specId)).toEqual(Array.from({ length: 4 }, () => 'tib-c13b'));
  });

  test('the best bag takes imagined clubs, keeps locked ones and reports its progress', () => {
    const imagined = [
      added('iron', degrees(25.5)),
      added('wedge', degrees(56)),
      bent(clubOfPlayer('tib-c05'), degrees(24)),
    ];
    const question = { imagined, locked: ['tib-c04', 'tib-c03'], tees: 'back' };
    const search = bagChoice(player, playerBook, question);
    const answer = finished(search);
    expect(answer.best.ids).toEqual(expect.arrayContaining(['tib-c01', 'tib-c03', 'tib-c04']));
    for (const { ids } of answer.near) {
      expect(ids).toHaveLength(13);
      expect(ids.includes('tib-c05') && ids.includes(imagined[2].id)).toBe(false);
    }
    expect(() => finished(bagChoice(player, playerBook, { ...question, locked: ['none'] }))).toThrow(
      /none is not there/,
    );
    expect(() => finished(bagChoice(player, playerBook, { ...question, tees: 'red' }))).toThrow(/tees red/);
  });
});

describe('an even bag', () => {
  // Eleven clubs of 11.5 yd steps, 191.5 to 76.5 yd, at the lofts a middling golfer would have for them (invented).
  const clubs = [
    clubOf('w7', 'fairway wood', 21),
    clubOf('h4', 'hybrid', 22.5),
    ...[27, 32, 36.5, 40.5, 44].map((loft, i) => clubOf(`i${i + 5}`, 'iron', loft)),
    ...[47.5, 51.5, 55, 59].map((loft) => clubOf(`s${Math.round(loft)}`, 'wedge', loft)),
  ];
  const stockOf = (c: number) => (191.5 - 11.5 * c) * 0.9144;

  test('raises an alarm in at most 5 of 100 bags without overlap, wide gap or odd loft', () => {
    let alarmed = 0;
    for (let golfer = 0; golfer < 100; golfer++) {
      const numbers = randomNumbers(`even ${golfer}`);
      const level = numbers.normal(0, 0.03);
      const shots = clubs.flatMap((club, c) =>
        Array.from({ length: 14 }, (_, k) => {
          const short = numbers.chance(0.15) ? numbers.between(0.05, 0.3) : 0;
          const log = Math.log(stockOf(c)) + level + numbers.normal(0, 0.05) + Math.log(1 - short);
          const slots = { clubId: club.id, roundId: ROUNDS[k % 4].id };
          return carried(`${club.id}-${k}`, Math.round(Math.exp(log) * 10) / 10, slots);
        }),
      );
      const logbook = logbookOf({ clubs, shots });
      const { gaps, warnings } = bagReport(logbook, fitBook(logbook, AS_OF));
      const alarms = gaps.filter(({ verdict }) => verdict === 'overlap' || verdict === 'wide gap');
      if (alarms.length + warnings.length > 0) alarmed++;
    }
    expect(alarmed).toBeLessThanOrEqual(5);
  }, 60_000);

  test('keeps its driver, of which approaches say nothing, when a club must go', () => {
    const driver = clubOf('dr', 'driver', 10.5);
    const wedges = [49.5, 53.5].map((loft) => clubOf(`g${Math.round(loft)}`, 'wedge', loft));
    const full = logbookOf({ clubs: [...clubs, driver, ...wedges, clubOf('pt', 'putter', 3)] });
    const answer = finished(bagChoice(full, fitBook(full, AS_OF), { imagined: [], locked: [], tees: null }));
    expect(answer.bags).toBe(13);
    for (const { ids } of answer.near) expect(ids).toContain('dr');
    // Fourteen beside the putter are no bag to compare with.
    expect(answer.present).toBeNull();
  });

  test('of a golfer without a shot is answered all the same', () => {
    const logbook = logbookOf({ clubs, shots: [] });
    const sheet = bagReport(logbook, fitBook(logbook, AS_OF));
    expect(sheet.coverage).toHaveLength(1);
    expect(sheet.coverage[0]).toMatchObject({ approaches: 0, ownShare: 0, rounds: 0 });
    expect(sheet.changes).toEqual([]);
    expect(sheet.best?.againstPresent?.verdict).toBe('no real difference');
  });

  test('without a club has nothing to choose from', () => {
    const logbook = logbookOf({ clubs: [], shots: [] });
    const sheet = bagReport(logbook, fitBook(logbook, AS_OF));
    expect(sheet).toMatchObject({ warnings: [], gaps: [], coverage: [], best: null });
  });
});
