import * as z from 'zod/mini';
import { type CarrybookFile, carrybookFileSchema, writeCarrybookFile } from '../src/exchange/carrybookFile.ts';
import { writeTeamFile } from '../src/exchange/teamFile.ts';
import { playerDone, playerReviews } from './coachReviews.ts';
import { coach, type DemoClub, type Golfer, player, specId } from './people.ts';
import { type Outing, playRound } from './playRound.ts';
import { practise } from './practise.ts';
import { byId, type ClubRecord, centimetres, type DoneRecord, fromYards, type ReviewRecord } from './records.ts';
import {
  coachPractice,
  coachRounds,
  type PracticePlan,
  playerPractice,
  playerRounds,
  type RoundPlan,
} from './seasonPlan.ts';
import { seededNumbers } from './seededNumbers.ts';

/** The moment both demo files are written: the evening after the last round. */
export const EXPORTED_AT = '2026-07-20T18:00:00.000Z';

/** When the clubs were entered. */
const ENTERED_AT = '2026-03-01T12:00:00.000Z';

function clubRecord(golfer: Golfer, club: DemoClub): ClubRecord {
  const last = club.specs[club.specs.length - 1];
  return {
    id: club.id,
    kind: club.kind,
    name: club.name,
    inBag: club.inBag,
    claimed_m: club.claimed_yd === null ? null : centimetres(fromYards(club.claimed_yd)),
    notPlayed: [...club.notPlayed],
    launch: null,
    specPeriods: club.specs.map((spec, index) => ({
      id: specId(club, index),
      from: spec.from,
      loft_deg: spec.loft_deg,
      lie_deg: null,
      length_m: club.kind === 'putter' ? 0.86 : null,
      bounce_deg: null,
      shaft: '',
      head: '',
      note: spec.note,
    })),
    changedAt: club.specs.length > 1 ? `${last.from}T18:00:00.000Z` : ENTERED_AT,
    device: golfer.device,
  };
}

interface Season {
  readonly golfer: Golfer;
  readonly seed: number;
  readonly prefix: string;
  readonly rounds: readonly RoundPlan[];
  readonly practice: readonly PracticePlan[];
  readonly reviews: readonly ReviewRecord[];
  readonly done: readonly DoneRecord[];
}

function outings(season: Season): Outing[] {
  const two = (number: number): string => String(number).padStart(2, '0');
  const rounds = season.rounds.map((plan, index) =>
    playRound(season.golfer, plan, `${season.prefix}-r${two(index + 1)}`, seededNumbers(season.seed * 1000 + index)),
  );
  const practice = season.practice.map((plan, index) =>
    practise(
      season.golfer,
      plan,
      `${season.prefix}-p${two(index + 1)}`,
      seededNumbers(season.seed * 1000 + 500 + index),
    ),
  );
  return [...rounds, ...practice];
}

function file(season: Season): CarrybookFile {
  const { golfer } = season;
  const all = outings(season);
  return z.parse(carrybookFileSchema, {
    format: 'carrybook',
    version: 1,
    exportedAt: EXPORTED_AT,
    scope: 'backup',
    player: {
      id: golfer.id,
      name: golfer.name,
      hand: golfer.hand,
      units: 'yards',
      changedAt: ENTERED_AT,
      device: golfer.device,
    },
    clubs: byId(golfer.clubs.map((club) => clubRecord(golfer, club))),
    rounds: byId(all.map((outing) => outing.round)),
    shots: byId(all.flatMap((outing) => outing.shots)),
    reviews: byId(season.reviews),
    done: season.done,
    deleted: [{ id: `${season.prefix}-typo-1`, of: 'shot', at: '2026-03-30T20:00:00.000Z', device: golfer.device }],
  }) as CarrybookFile;
}

/** The same rounds on level ground at sea level, 20 °C and no wind: what a test of the engine without weather needs. */
function inStandardConditions(plan: RoundPlan): RoundPlan {
  const holes = plan.course.holes.map((hole) => ({ ...hole, rise_m: 0 }));
  return {
    ...plan,
    course: { ...plan.course, altitude_m: 0, holes },
    weather: { ...plan.weather, temperature_C: 20, altitude_m: 0, wind_mps: 0, wet: false },
  };
}

function atTwenty(plan: PracticePlan): PracticePlan {
  return { ...plan, weather: { ...plan.weather, temperature_C: 20, altitude_m: 0 } };
}

/** The invented player's logbook. `weather`: as it was, or standard conditions on every day. */
export function playerFile(weather: 'real' | 'standard' = 'real'): CarrybookFile {
  return file({
    golfer: player,
    seed: 20,
    prefix: 'tib',
    rounds: weather === 'real' ? playerRounds : playerRounds.map(inStandardConditions),
    practice: weather === 'real' ? playerPractice : playerPractice.map(atTwenty),
    reviews: playerReviews,
    done: playerDone,
  });
}

/** The invented coach's own logbook, see {@link playerFile}. */
export function coachFile(weather: 'real' | 'standard' = 'real'): CarrybookFile {
  return file({
    golfer: coach,
    seed: 31,
    prefix: 'quo',
    rounds: weather === 'real' ? coachRounds : coachRounds.map(inStandardConditions),
    practice: weather === 'real' ? coachPractice : coachPractice.map(atTwenty),
    reviews: [],
    done: [],
  });
}

/** Every file of the demo season: name and text. */
export function demoFiles(): ReadonlyMap<string, string> {
  const [ofPlayer, ofCoach] = [playerFile(), coachFile()];
  return new Map([
    ['season-player.json', writeCarrybookFile(ofPlayer)],
    ['season-coach.json', writeCarrybookFile(ofCoach)],
    ['team.json', writeTeamFile([ofPlayer, ofCoach])],
  ]);
}
