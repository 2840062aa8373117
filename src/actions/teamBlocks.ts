import type { SeasonSpan } from '../golf/seasonSpan.ts';
import { ONLY } from '../logbook/database.ts';
import { type StoredBlock, teamTables } from '../logbook/teamStore.ts';
import type { Keeper } from './keeper.ts';
import { type Outcome, written } from './outcome.ts';
import { write } from './write.ts';

/** SHA-256 of a text as hexadecimal digits. */
export async function hashOf(text: string): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text)));
  return [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** The mark under which a golfer is blocked: no name and no id can be read back out of it. */
export async function blockMark(blocks: readonly StoredBlock[], playerId: string): Promise<string | null> {
  const salt = blocks.find((block) => block.kind === 'salt');
  return salt ? hashOf(`${salt.salt} ${playerId}`) : null;
}

/** Whether a golfer was deleted here. */
export async function isBlocked(blocks: readonly StoredBlock[], playerId: string): Promise<boolean> {
  const mark = await blockMark(blocks, playerId);
  return blocks.some((block) => block.kind === 'player' && block.key === mark);
}

/** The seasons of a golfer that were purged here: those purged for everybody, and for this golfer alone. */
export async function purgedSpans(blocks: readonly StoredBlock[], playerId: string): Promise<SeasonSpan[]> {
  const mark = await blockMark(blocks, playerId);
  return blocks.flatMap((block) =>
    block.kind === 'season' && (block.player === ONLY || block.player === mark) ? [block.span] : [],
  );
}

/** The blocks with a salt among them, which is made when it is first needed. */
export async function saltedBlocks(team: Keeper): Promise<Outcome<readonly StoredBlock[]>> {
  const salt = team.newId();
  return write(team, async ({ db }) => {
    const { blocks } = teamTables(db);
    if (!(await blocks.get('salt'))) await blocks.put({ key: 'salt', kind: 'salt', salt });
    return written(await blocks.toArray());
  });
}
