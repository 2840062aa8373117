import { isSummary, readSummary } from '../exchange/bookSummary.ts';
import type { MergeReport } from '../exchange/mergeReport.ts';
import type { Refusal } from '../exchange/refusal.ts';
import type { MemberText, TakenMember, TeamTexts } from '../exchange/takeInMember.ts';
import type { SeasonSpan } from '../golf/seasonSpan.ts';
import type { StorageTrouble } from '../logbook/storageTrouble.ts';
import { type StoredBlock, type StoredMember, type StoredText, teamTables } from '../logbook/teamStore.ts';
import type { Keeper } from './keeper.ts';
import { type Outcome, refuse, written } from './outcome.ts';
import { hashOf, isBlocked, purgedSpans } from './teamBlocks.ts';
import { write } from './write.ts';

/** The heavy part of taking files in; the app does it in its worker. */
export interface TakeInWork {
  readonly memberTexts: (text: string) => Promise<TeamTexts>;
  readonly takeInMember: (
    incoming: string,
    stored: string | null,
    purged: readonly SeasonSpan[],
  ) => Promise<TakenMember>;
}

/** What became of one golfer's book in a file, or of the file. */
export type TakenIn =
  | {
      readonly kind: 'read';
      readonly playerId: string;
      readonly name: string;
      readonly isNew: boolean;
      readonly report: MergeReport;
    }
  | { readonly kind: 'summary'; readonly playerId: string; readonly name: string; readonly isNewer: boolean }
  /** This golfer was deleted from this device: an old file does not bring them back. */
  | { readonly kind: 'blocked'; readonly playerId: string; readonly name: string }
  | { readonly kind: 'refused'; readonly name: string; readonly refusals: readonly Refusal[] }
  /** A coach's review is for the golfer it was written for. */
  | { readonly kind: 'review' }
  | { readonly kind: 'unsaved'; readonly name: string; readonly why: StorageTrouble };

/** How much longer than a shot a golfer's seasons may take to be written. */
const PATIENCE_TIMES = 6;
/** How often a book is merged anew when another tab wrote it meanwhile. */
const MOST_TRIES = 4;

interface Kept {
  readonly member: StoredMember | undefined;
  readonly text: StoredText | undefined;
  readonly blocks: readonly StoredBlock[];
}

async function keptOf(team: Keeper, playerId: string) {
  return team.connection.withDatabase(async (db): Promise<Kept> => {
    const { members, texts, blocks } = teamTables(db);
    const [member, text, all] = await Promise.all([members.get(playerId), texts.get(playerId), blocks.toArray()]);
    return { member, text, blocks: all };
  }, PATIENCE_TIMES);
}

/** Writes a golfer's book unless another tab changed it since it was read. */
function keep(team: Keeper, before: StoredMember | undefined, member: StoredMember, text: StoredText) {
  return write<undefined, { kind: 'changed meanwhile' }>(
    team,
    async ({ db }) => {
      const { members, texts } = teamTables(db);
      const now = await members.get(member.playerId);
      if (now?.hash !== before?.hash) return refuse({ kind: 'changed meanwhile' });
      await Promise.all([members.put(member), texts.put(text)]);
      return written(undefined);
    },
    PATIENCE_TIMES,
  );
}

const BUSY: StorageTrouble = { kind: 'failed', reason: 'another tab keeps writing the same book' };

async function inTurns(name: string, once: () => Promise<TakenIn | 'again'>): Promise<TakenIn> {
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const outcome = await once();
    if (outcome !== 'again') return outcome;
  }
  return { kind: 'unsaved', name, why: BUSY };
}

function ended(
  name: string,
  kept: Outcome<undefined, { kind: 'changed meanwhile' }>,
  done: TakenIn,
): TakenIn | 'again' {
  if (kept.kind === 'saved') return done;
  return kept.kind === 'refused' ? 'again' : { kind: 'unsaved', name, why: kept.why };
}

async function takeInOne(team: Keeper, work: TakeInWork, incoming: MemberText): Promise<TakenIn> {
  const { playerId, name } = incoming;
  return inTurns(name, async () => {
    const kept = await keptOf(team, playerId);
    if (kept.kind !== 'ok') return { kind: 'unsaved', name, why: kept };
    const { member, text, blocks } = kept.value;
    if (await isBlocked(blocks, playerId)) return { kind: 'blocked', playerId, name };
    const stored = text?.text ? text.text : null;
    const taken = await work.takeInMember(incoming.text, stored, await purgedSpans(blocks, playerId));
    const done: TakenIn = { kind: 'read', playerId, name: taken.name, isNew: stored === null, report: taken.report };
    if (taken.text === stored) return done;
    const { asOf, rounds, shots, firstOn, lastOn, done: marked } = taken;
    const after: StoredMember = {
      playerId,
      from: 'shots',
      name: taken.name,
      asOf,
      rounds,
      shots,
      firstOn,
      lastOn,
      done: marked,
      hash: await hashOf(taken.text),
      takenAt: new Date(team.clock.now()).toISOString(),
    };
    return ended(
      name,
      await keep(team, member, after, { playerId, text: taken.text, summary: text?.summary ?? '' }),
      done,
    );
  });
}

async function takeInSummary(team: Keeper, summary: string): Promise<TakenIn> {
  const reading = readSummary(summary);
  if (reading.kind === 'refused') return { kind: 'refused', name: '', refusals: reading.refusals };
  const { player, asOf, clubs } = reading.value;
  const { id: playerId, name } = player;
  return inTurns(name, async () => {
    const kept = await keptOf(team, playerId);
    if (kept.kind !== 'ok') return { kind: 'unsaved', name, why: kept };
    const { member, text, blocks } = kept.value;
    if (await isBlocked(blocks, playerId)) return { kind: 'blocked', playerId, name };
    const before = text?.summary ? readSummary(text.summary) : null;
    const beforeAt = before?.kind === 'read' ? before.value.asOf : '';
    // Shots say more than numbers do, and a later summary more than an earlier; of two of one moment the larger text stays.
    const isNewer = asOf > beforeAt || (asOf === beforeAt && summary > (text?.summary ?? ''));
    const done: TakenIn = { kind: 'summary', playerId, name, isNewer: isNewer && !text?.text };
    if (!isNewer) return done;
    const after: StoredMember =
      member && text?.text
        ? member
        : {
            playerId,
            from: 'summary',
            name,
            asOf,
            rounds: 0,
            shots: clubs.reduce((sum, club) => sum + club.cells.reduce((all, { shots }) => all + shots, 0), 0),
            firstOn: null,
            lastOn: null,
            done: [],
            hash: await hashOf(summary),
            takenAt: new Date(team.clock.now()).toISOString(),
          };
    return ended(name, await keep(team, member, after, { playerId, text: text?.text ?? '', summary }), done);
  });
}

/**
 * Takes one file into the team: every golfer in it, each by itself, so that a broken book stops no other.
 * Any order of files, and each as often as it comes, ends in the same team. The golfer's own logbook on
 * this device is not touched.
 */
export async function takeInFile(team: Keeper, work: TakeInWork, text: string): Promise<TakenIn[]> {
  if (isSummary(text)) return [await takeInSummary(team, text.trim())];
  const texts = await work.memberTexts(text);
  if (texts.kind === 'refused') return [{ kind: 'refused', name: '', refusals: texts.refusals }];
  if (texts.kind === 'review') return [{ kind: 'review' }];
  const taken: TakenIn[] = [];
  for (const member of texts.members) taken.push(await takeInOne(team, work, member));
  for (const { name, refusals } of texts.broken) taken.push({ kind: 'refused', name, refusals });
  return taken;
}
