import type { TakenMember } from '../exchange/takeInMember.ts';
import type { SeasonSpan } from '../golf/seasonSpan.ts';
import { newDevice, newPlayer, ONLY } from '../logbook/database.ts';
import {
  type StoredBlock,
  type StoredLook,
  type StoredMember,
  type StoredReview,
  type StoredText,
  teamTables,
} from '../logbook/teamStore.ts';
import type { Keeper } from './keeper.ts';
import { type Gone, gone, type Outcome, written } from './outcome.ts';
import { blockMark, hashOf, saltedBlocks } from './teamBlocks.ts';
import { write } from './write.ts';

/** How much longer than a shot all books may take to be read and written. */
const PATIENCE_TIMES = 12;

/** Work on a stored book that takes long; the app does it in its worker. */
export type PurgeWork = (text: string, spans: readonly SeasonSpan[]) => Promise<TakenMember>;

/** What was deleted of a golfer: held by the screen, and nowhere else, for as long as it can be taken back. */
export interface DeletedMember {
  readonly member: StoredMember;
  readonly text: StoredText | undefined;
  readonly look: StoredLook | undefined;
  readonly reviews: readonly StoredReview[];
  readonly groups: readonly string[];
}

/**
 * Deletes a golfer from this device: book, numbers, reviews, groups. Only a mark stays behind that no name
 * can be read out of, so that an old file does not bring the golfer back.
 */
export async function deleteMember(team: Keeper, playerId: string): Promise<Outcome<DeletedMember, Gone>> {
  const salted = await saltedBlocks(team);
  if (salted.kind !== 'saved') return salted;
  const mark = await blockMark(salted.value, playerId);
  return write<DeletedMember, Gone>(team, async ({ db }) => {
    const { members, texts, pages, looks, reviews, groups, blocks } = teamTables(db);
    const isTheirs = (record: { readonly playerId: string }) => record.playerId === playerId;
    const member = await members.get(playerId);
    if (!member) return gone;
    const deleted: DeletedMember = {
      member,
      text: await texts.get(playerId),
      look: await looks.get(playerId),
      reviews: await reviews.filter(isTheirs).toArray(),
      groups: (await groups.toArray()).flatMap((group) => (group.playerIds.includes(playerId) ? [group.id] : [])),
    };
    await Promise.all([
      members.delete(playerId),
      texts.delete(playerId),
      looks.delete(playerId),
      pages.filter(isTheirs).delete(),
      reviews.filter(isTheirs).delete(),
      groups.toCollection().modify((group) => {
        Object.assign(group, { playerIds: group.playerIds.filter((id) => id !== playerId) });
      }),
    ]);
    if (mark !== null) await blocks.put({ key: mark, kind: 'player' });
    return written(deleted);
  });
}

/** Takes the deletion of a golfer back. A book taken in since stays. */
export async function bringBack(team: Keeper, deleted: DeletedMember): Promise<Outcome> {
  const { member, text, look, reviews, groups } = deleted;
  const allowed = await allowAgain(team, member.playerId);
  if (allowed.kind !== 'saved') return allowed;
  return write(team, async ({ db }) => {
    const tables = teamTables(db);
    if (!(await tables.members.get(member.playerId))) {
      await tables.members.put(member);
      if (text) await tables.texts.put(text);
    }
    if (look) await tables.looks.put(look);
    await tables.reviews.bulkPut([...reviews]);
    await tables.groups.toCollection().modify((group) => {
      if (groups.includes(group.id)) {
        Object.assign(group, { playerIds: [...new Set([...group.playerIds, member.playerId])].sort() });
      }
    });
    return written(undefined);
  });
}

/** Lets a golfer who was deleted be taken in again. */
export async function allowAgain(team: Keeper, playerId: string): Promise<Outcome> {
  const salted = await saltedBlocks(team);
  if (salted.kind !== 'saved') return salted;
  const mark = await blockMark(salted.value, playerId);
  return write(team, async ({ db }) => {
    if (mark !== null) await teamTables(db).blocks.delete(mark);
    return written(undefined);
  });
}

/**
 * Purges a stretch of days, of one golfer or of everybody: rounds and shots in it go, and files that hold
 * them do not bring them back. Clubs and numbers from other days stay. Says how many rounds went.
 *
 * @param playerId whose; null: everybody's, those who are taken in later too.
 */
export async function purgeSeason(
  team: Keeper,
  work: PurgeWork,
  span: SeasonSpan,
  playerId: string | null,
): Promise<Outcome<number>> {
  const salted = await saltedBlocks(team);
  if (salted.kind !== 'saved') return salted;
  const player = playerId === null ? ONLY : ((await blockMark(salted.value, playerId)) ?? ONLY);
  const block: StoredBlock = { key: `${player} ${span.from} ${span.to}`, kind: 'season', player, span };
  const blocked = await write(team, async ({ db }) => {
    await teamTables(db).blocks.put(block);
    return written(undefined);
  });
  if (blocked.kind !== 'saved') return blocked;
  const stored = await team.connection.withDatabase((db) => {
    const { texts } = teamTables(db);
    return playerId === null ? texts.toArray() : texts.where('playerId').equals(playerId).toArray();
  }, PATIENCE_TIMES);
  if (stored.kind !== 'ok') return { kind: 'unsaved', why: stored };
  let rounds = 0;
  for (const kept of stored.value) {
    if (kept.text === '') continue;
    const purged = await work(kept.text, [span]);
    const hash = await hashOf(purged.text);
    const saved = await write(
      team,
      async ({ db }) => {
        const { members, texts, pages, looks } = teamTables(db);
        const member = await members.get(kept.playerId);
        if (!member || member.rounds === purged.rounds) return written(0);
        const { name, asOf, shots, firstOn, lastOn } = purged;
        await members.put({ ...member, name, asOf, rounds: purged.rounds, shots, firstOn, lastOn, hash });
        // A summary may speak of the same shots, and so may numbers noted at the last review.
        await texts.put({ ...kept, text: purged.text, summary: '' });
        await looks.delete(kept.playerId);
        await pages.filter((page) => page.playerId === kept.playerId).delete();
        return written(member.rounds - purged.rounds);
      },
      PATIENCE_TIMES,
    );
    if (saved.kind !== 'saved') return saved;
    rounds += saved.value;
  }
  return { kind: 'saved', value: rounds };
}

/** Deletes the whole team from this device, the list of what may not come back included. */
export function deleteTeam(team: Keeper): Promise<Outcome> {
  const playerId = team.newId();
  const deviceId = team.newId();
  return team.line.after(() =>
    write(team, async ({ db }) => {
      await Promise.all(db.tables.map((table) => table.clear()));
      await db.table('player').put(newPlayer(playerId));
      await db.table('device').put(newDevice(deviceId));
      return written(undefined);
    }),
  );
}
