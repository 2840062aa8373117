import * as z from 'zod/mini';
import type { Keeper } from '../../src/actions/keeper.ts';
import { openTeam } from '../../src/actions/openTeam.ts';
import type { TakeInWork } from '../../src/actions/takeIn.ts';
import { carrybookFileOf, writeCarrybookFile } from '../../src/exchange/carrybookFile.ts';
import { memberTexts, takeInMember } from '../../src/exchange/takeInMember.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { playerSchema } from '../../src/golf/player.ts';
import { type StoredMember, type StoredText, teamTables } from '../../src/logbook/teamStore.ts';
import { purgedMember } from '../../src/worker/teamWork.ts';
import { logbookOf, ROUNDS, solidShots } from '../book/logbooks.ts';
import { type Phone, phone } from './phone.ts';

/** The work that the app does in its worker, done here. */
export const work: TakeInWork = {
  memberTexts: async (text) => memberTexts(text),
  takeInMember: async (incoming, stored, purged) => takeInMember(incoming, stored, purged),
};
export const purge = async (...args: Parameters<typeof purgedMember>) => purgedMember(...args);

/** An invented coach's device with nobody on it. */
export function coach(): { team: Keeper; device: Phone } {
  const device = phone('coach');
  return { team: openTeam({ factory: device.factory, clock: device.clock, newId: device.newId }), device };
}

/** An invented golfer's logbook. */
export function golfer(id: string, name: string, records: Partial<Logbook> = {}): Logbook {
  const player = z.parse(playerSchema, { id, name, changedAt: '2026-05-01T08:00:00Z', device: `phone-${id}` });
  return logbookOf({ shots: solidShots('i7', 140, 12, {}, `${id}-i7`), ...records, player });
}

/** A logbook as the file its golfer hands over. */
export function fileOf(logbook: Logbook, exportedAt = '2026-06-30T20:00:00Z'): string {
  return writeCarrybookFile(carrybookFileOf(logbook, exportedAt, 'share'));
}

/** All that is stored of the team's books, in order, less the day it was taken in. */
export async function storedTeam(
  team: Keeper,
): Promise<{ members: Omit<StoredMember, 'takenAt'>[]; texts: StoredText[] }> {
  const read = await team.connection.withDatabase(async (db) => {
    const { members, texts } = teamTables(db);
    return { members: await members.toArray(), texts: await texts.toArray() };
  });
  if (read.kind !== 'ok') throw new Error(`not read: ${read.kind}`);
  const { members, texts } = read.value;
  return { members: members.map(({ takenAt: _takenAt, ...member }) => member), texts };
}

export const FIRST_ROUNDS = ROUNDS.slice(0, 2);
