import { describe, expect, test } from 'vitest';
import { demoFiles } from '../../demo/logbooks.ts';
import { demoTruth } from '../../demo/truth.ts';
import { writeCarrybookFile } from '../../src/exchange/carrybookFile.ts';
import { readTeamFile } from '../../src/exchange/teamFile.ts';
import { specOn } from '../../src/golf/club.ts';
import { daysBetween } from '../../src/golf/instant.ts';
import { demoSeason, demoText, onCourse, shotsByHole } from './season.ts';

const seasons = [
  ['player', demoSeason('season-player.json')],
  ['coach', demoSeason('season-coach.json')],
] as const;

test('the script writes the files that are there, to the letter, and the same twice', () => {
  const made = demoFiles();
  expect([...made.keys()]).toEqual(['season-player.json', 'season-coach.json', 'team.json']);
  for (const [name, text] of made) expect(text === demoText(name), name).toBe(true);
  expect([...demoFiles().values()]).toEqual([...made.values()]);
});

test('the team file holds both logbooks whole', () => {
  const team = readTeamFile(demoText('team.json'));
  if (team.kind === 'refused') throw new RangeError(JSON.stringify(team.refusals));
  expect(team.value.broken).toEqual([]);
  const byName = new Map(team.value.members.map(({ file }) => [file.player.name, file]));
  for (const [, file] of seasons) expect(byName.get(file.player.name)).toEqual(file);
});

describe.each(seasons)('the season of the %s', (name, file) => {
  const course = onCourse(file);
  const holes = shotsByHole(file);
  const played = file.rounds.filter((round) => round.play !== 'practice ground');
  const count = (is: (shot: (typeof course)[number]) => boolean): number => course.filter(is).length;

  test('is written with every key, in the order of the format', () => {
    const raw = demoText(`season-${name}.json`);
    expect(writeCarrybookFile(file) === raw).toBe(true);
    const whole = JSON.parse(raw);
    const keysOf = (record: object): string => Object.keys(record).join(' ');
    for (const list of ['clubs', 'rounds', 'shots']) {
      expect(new Set(whole[list].map(keysOf)).size, list).toBe(1);
    }
    expect(Object.keys(whole.shots[0])).toEqual(Object.keys(file.shots[0]));
  });

  test('is long enough: rounds, shots, putts, from a cold spring to summer', () => {
    expect(played.length).toBeGreaterThanOrEqual(12);
    expect(course.length).toBeGreaterThanOrEqual(450);
    const putts = played.flatMap((round) => round.holes.flatMap((hole) => hole.putts));
    expect(putts.length).toBeGreaterThanOrEqual(300);
    expect(putts.filter((putt) => putt.length_m !== null).length).toBeGreaterThan(0.8 * putts.length);
    const days = played.map((round) => round.date).sort();
    expect(days[0] < '2026-04-01' && days[days.length - 1] > '2026-07-01').toBe(true);
    const temperatures = played.map((round) => round.conditions.temperature_C ?? 20);
    expect(Math.min(...temperatures)).toBeLessThanOrEqual(7);
    expect(Math.max(...temperatures)).toBeGreaterThanOrEqual(25);
    expect(new Set(played.map((round) => round.conditions.altitude_m)).size).toBeGreaterThan(1);
    expect(new Set(played.map((round) => round.tees)).size).toBe(2);
    const pauses = days.slice(1).map((day, index) => daysBetween(days[index], day));
    expect(Math.max(...pauses)).toBeGreaterThanOrEqual(21);
  });

  test('lets every shot find its round, hole, club and spec period', () => {
    const rounds = new Map(file.rounds.map((round) => [round.id, round]));
    const clubs = new Map(file.clubs.map((club) => [club.id, club]));
    for (const shot of file.shots) {
      const round = rounds.get(shot.roundId);
      expect(round, shot.id).toBeDefined();
      if (!round) continue;
      if (round.play !== 'practice ground') {
        expect(
          round.holes.some((hole) => hole.number === shot.hole),
          shot.id,
        ).toBe(true);
      }
      if (shot.clubId === null) {
        expect(shot.specId, shot.id).toBeNull();
        continue;
      }
      const club = clubs.get(shot.clubId);
      expect(round.bag, shot.id).toContain(shot.clubId);
      expect(club && specOn(club, round.date).id, shot.id).toBe(shot.specId);
      expect(club?.notPlayed, shot.id).not.toContain(shot.swing);
      const truth = demoTruth.some((cell) => cell.specId === shot.specId && cell.swing === shot.swing);
      expect(truth, shot.id).toBe(true);
    }
    for (const round of file.rounds) expect(round.bag.length, round.id).toBeLessThanOrEqual(14);
  });

  test('lets each lie follow from the last, and every hole begin on the tee', () => {
    let links = 0;
    for (const [hole, shots] of holes) {
      if (shots[0].lie !== null) expect(shots[0].lie, hole).toBe('tee');
      for (const [index, shot] of shots.slice(1).entries()) {
        const last = shots[index];
        // A shot that nobody wrote down breaks the chain, and a provisional is no part of it.
        if (shot.number - last.number !== 1 || last.outcome === 'provisional unused' || shot.fromDrop) continue;
        if (last.restLie === null || shot.lie === null || shot.outcome === 'provisional unused') continue;
        links++;
        expect(shot.lie, shot.id).toBe(last.restLie);
      }
      const inTheMiddle = shots.slice(0, -1).map((shot) => shot.restLie);
      expect(inTheMiddle, hole).not.toContain('holed');
      expect(inTheMiddle, hole).not.toContain('green');
    }
    expect(links).toBeGreaterThan(250);
  });

  test('adds up on every hole, but where a shot was not written down', () => {
    let unlogged = 0;
    for (const round of played) {
      for (const hole of round.holes) {
        const shots = holes.get(`${round.id} ${hole.number}`) ?? [];
        const penalties = shots.reduce((sum, shot) => sum + shot.penalty, 0);
        expect(hole.penalties, `${round.id} ${hole.number}`).toBe(penalties);
        if (hole.result !== 'played') {
          expect(hole.strokes).toBeNull();
          continue;
        }
        const hit = shots.filter((shot) => shot.outcome !== 'provisional unused').length;
        const missing = (hole.strokes ?? 0) - hit - penalties - hole.putts.length;
        expect([0, 1], `${round.id} ${hole.number}`).toContain(missing);
        unlogged += missing;
        const holed = hole.putts.length === 0 ? shots.at(-1)?.restLie === 'holed' : hole.putts.at(-1)?.holed;
        expect(holed, `${round.id} ${hole.number}`).toBe(true);
      }
      const strokes = round.holes.map((hole) => hole.strokes ?? (hole.par ?? 4) + 2);
      const overPar = strokes.reduce((sum, each, index) => sum + each - (round.holes[index].par ?? 4), 0);
      expect(overPar, round.id).toBeGreaterThan(-3);
      expect(overPar, round.id).toBeLessThan(25);
    }
    expect(unlogged).toBeGreaterThanOrEqual(2);
  });

  test('has what goes wrong on a course: lost balls, drops, water, provisionals, holes not finished', () => {
    expect(count((shot) => shot.outcome === 'lost' && shot.penalty === 1)).toBeGreaterThanOrEqual(2);
    expect(count((shot) => shot.outcome === 'penalty area')).toBeGreaterThanOrEqual(2);
    expect(count((shot) => shot.fromDrop)).toBeGreaterThanOrEqual(2);
    expect(count((shot) => shot.outcome === 'provisional unused')).toBeGreaterThanOrEqual(1);
    expect(count((shot) => shot.outcome === 'conceded')).toBe(1);
    expect(course.some((shot) => shot.note.includes('the provisional is in play'))).toBe(true);
    const again = [...holes.values()].filter((shots) => shots.filter((shot) => shot.lie === 'tee').length > 1);
    expect(again.length).toBeGreaterThanOrEqual(3);
    const results = new Set(played.flatMap((round) => round.holes.map((hole) => hole.result)));
    expect([...results].sort()).toEqual(['conceded', 'picked up', 'played']);
  });

  test('is as patchy as a golfer’s own log', () => {
    const share = (n: number): number => n / course.length;
    const normal = course.filter((shot) => shot.intent === 'normal');
    const mishits = normal.filter((shot) => shot.strike !== null && shot.strike !== 'solid').length;
    const labelled = normal.filter((shot) => shot.strike !== null).length;
    expect(mishits / labelled).toBeGreaterThan(0.12);
    expect(mishits / labelled).toBeLessThan(0.25);
    expect(labelled / normal.length).toBeGreaterThan(0.6);
    expect(labelled / normal.length).toBeLessThan(0.95);
    for (const slot of ['clubId', 'lie', 'restLie'] as const) {
      expect(share(count((shot) => shot[slot] === null))).toBeGreaterThan(0);
      expect(share(count((shot) => shot[slot] === null))).toBeLessThan(0.06);
    }
    const unmeasured = normal.filter(
      (shot) => !shot.carry && !shot.total && shot.carryAtLeast_m === null && shot.carryAtMost_m === null,
    );
    expect(unmeasured.length / normal.length).toBeGreaterThan(0.05);
    expect(unmeasured.length / normal.length).toBeLessThan(0.3);
    for (const intent of ['knockdown', 'recovery', 'chip']) {
      expect(count((shot) => shot.intent === intent)).toBeGreaterThanOrEqual(3);
    }
    expect(count((shot) => shot.note !== '')).toBeGreaterThanOrEqual(10);
    expect(played.some((round) => round.conditions.wind_mps === null)).toBe(true);
  });

  test('knows its distances in every way', () => {
    for (const by of ['laser', 'gnss', 'judged', 'typed', 'paced']) {
      expect(
        count((shot) => shot.carry?.by === by),
        by,
      ).toBeGreaterThanOrEqual(2);
    }
    expect(count((shot) => shot.lie === 'tee' && shot.total?.by === 'gnss')).toBeGreaterThanOrEqual(30);
    expect(count((shot) => shot.carryAtLeast_m !== null)).toBeGreaterThanOrEqual(5);
    expect(count((shot) => shot.carryAtMost_m !== null)).toBeGreaterThanOrEqual(5);
    expect(count((shot) => shot.aim.long_m < 0)).toBeGreaterThanOrEqual(5);
    expect(count((shot) => shot.aim.right_m !== 0)).toBeGreaterThanOrEqual(10);
    expect(count((shot) => shot.offline_m !== null)).toBeGreaterThan(150);
    const marked = course.filter((shot) => shot.marks.ball);
    expect(marked.length).toBeGreaterThanOrEqual(5);
    expect(marked.length).toBeLessThan(30);
    for (const { marks } of marked) {
      for (const mark of [marks.ball, marks.rest]) {
        expect(Math.abs(mark?.lat_deg ?? 90)).toBeLessThan(0.2);
        expect(Math.abs(mark?.lon_deg ?? 90)).toBeLessThan(0.2);
      }
    }
  });

  test('is marked as invented and names its golfer by one word', () => {
    for (const round of file.rounds) expect(round.course).toContain('(invented)');
    expect(file.player.name).toMatch(/^[A-Z][a-z]+$/);
  });
});

test('the player’s 54° is bent 2° in May, with balls before and after, and the coach’s driver gets a shaft', () => {
  const [, player] = seasons[0];
  const bent = player.clubs.filter((club) => club.specPeriods.length > 1);
  expect(bent.map((club) => [club.kind, club.specPeriods.map((spec) => spec.loft_deg)])).toEqual([['wedge', [54, 52]]]);
  for (const spec of bent[0].specPeriods) {
    expect(player.shots.filter((shot) => shot.specId === spec.id).length).toBeGreaterThanOrEqual(15);
  }
  const [, coach] = seasons[1];
  expect(coach.clubs.filter((club) => club.specPeriods.length > 1).map((club) => club.kind)).toEqual(['driver']);
});

test('the player’s wedges have full cells, thin ones, empty ones and one not played', () => {
  const [, player] = seasons[0];
  const shots = player.shots.filter((shot) => shot.intent === 'normal' && (shot.carry || shot.total));
  const counts = player.clubs
    .filter((club) => club.kind === 'wedge')
    .flatMap((club) =>
      ['full', '10:30', '9:00', '7:30']
        .filter((swing) => !club.notPlayed.includes(swing))
        .map((swing) => shots.filter((shot) => shot.clubId === club.id && shot.swing === swing).length),
    );
  expect(counts).toHaveLength(15);
  expect(counts.filter((n) => n === 0).length).toBeGreaterThanOrEqual(1);
  expect(counts.filter((n) => n > 0 && n <= 5).length).toBeGreaterThanOrEqual(1);
  expect(counts.filter((n) => n >= 10).length).toBeGreaterThanOrEqual(3);
});

test('practice has own balls and range balls', () => {
  for (const [, file] of seasons) {
    const practice = file.rounds.filter((round) => round.play === 'practice ground');
    expect(new Set(practice.map((round) => round.ball))).toEqual(new Set(['own', 'range']));
    for (const round of practice) {
      expect(file.shots.filter((shot) => shot.roundId === round.id).length).toBeGreaterThanOrEqual(16);
    }
  }
});

test('the coach left notes on the player’s book: two tasks, one of them done', () => {
  const [, player] = seasons[0];
  const [, coach] = seasons[1];
  expect(player.reviews.map((review) => review.by)).toEqual(player.reviews.map(() => coach.player.name));
  const tasks = player.reviews.filter((review) => review.task);
  expect(tasks.length).toBeGreaterThanOrEqual(2);
  expect(player.done.map((done) => done.reviewId)).toEqual([tasks[0].id]);
});
