import type { Harm } from '../golf/bagInPlay.ts';
import { type Club, clubSchema } from '../golf/club.ts';
import { typicalBag } from '../golf/typicalBag.ts';
import { type LogbookDatabase, ONLY } from '../logbook/database.ts';
import type { Image } from '../logbook/undoEntry.ts';
import { leaveTombstone } from './binShot.ts';
import { type ByTheRules, clubsHeldBack, heldBack, openRoundOf } from './heldBack.ts';
import type { Keeper } from './keeper.ts';
import { type Gone, gone, type NotValid, type Outcome, type Refused, refuse, written } from './outcome.ts';
import type { Pen } from './pen.ts';
import { valid } from './valid.ts';
import { write } from './write.ts';

/** There are clubs already. */
export interface BagNotEmpty {
  readonly kind: 'bag not empty';
}

/** A golfer's own word for a club's full carry; null: none. */
export interface Claim {
  readonly clubId: string;
  readonly claimed_m: Club['claimed_m'];
}

async function changeClubs(
  pen: Pen,
  changes: readonly { readonly clubId: string; readonly change: Partial<Club> }[],
  how: 'checked' | 'allowed already' = 'checked',
): Promise<{ readonly kind: 'written'; readonly value: readonly Club[] } | Refused<Gone | NotValid | ByTheRules>> {
  const pairs: { before: Club; after: Club }[] = [];
  for (const { clubId, change } of changes) {
    const before = await pen.db.clubs.get(clubId);
    if (!before) return gone;
    const checked = valid(clubSchema, { ...before, ...change });
    if (checked.kind === 'refused') return checked;
    pairs.push({ before, after: pen.stamped(checked.value, before.changedAt) });
  }
  const held = how === 'checked' ? await clubsHeldBack(pen.db, pairs) : null;
  if (held) return held;
  await pen.db.clubs.bulkPut(pairs.map(({ after }) => after));
  const images = pairs.map(({ before, after }): Image => {
    return { of: 'club', id: after.id, before, after: after.changedAt };
  });
  if (images.length > 0) await pen.remember('save club', images);
  return written(pairs.map(({ after }) => after));
}

/** Saves what the golfer says some clubs carry (the anchors of a new golfer), all or none. */
export function saveClaims(
  keeper: Keeper,
  claims: readonly Claim[],
): Promise<Outcome<readonly Club[], Gone | NotValid | ByTheRules>> {
  const changes = claims.map(({ clubId, claimed_m }) => ({ clubId, change: { claimed_m } }));
  return keeper.line.after(() =>
    write<readonly Club[], Gone | NotValid | ByTheRules>(keeper, (pen) => changeClubs(pen, changes)),
  );
}

/**
 * Puts a club into the bag or takes it out. During a round by the Rules it comes in only if one may be
 * added (4.1b); out of play it may be taken at any time (4.1c).
 */
export function putInBag(
  keeper: Keeper,
  clubId: string,
  inBag: boolean,
): Promise<Outcome<readonly Club[], Gone | NotValid | ByTheRules>> {
  const changes = [{ clubId, change: { inBag } }];
  return keeper.line.after(() =>
    write<readonly Club[], Gone | NotValid | ByTheRules>(keeper, (pen) => changeClubs(pen, changes)),
  );
}

/**
 * Puts a club into the bag in the place of one that was damaged in the round and not by abuse: the one
 * replacement that the Rules allow who started with fourteen (4.1a(2)).
 */
export function replaceInBag(
  keeper: Keeper,
  clubId: string,
  by: string,
  harm: Harm,
): Promise<Outcome<readonly Club[], Gone | NotValid | ByTheRules>> {
  return keeper.line.after(() =>
    write<readonly Club[], Gone | NotValid | ByTheRules>(keeper, async (pen) => {
      const held = await heldBack(pen.db, { kind: 'bag', change: { kind: 'replace', clubId, by, harm } });
      if (held) return held;
      const swap = [
        { clubId, change: { inBag: false } },
        { clubId: by, change: { inBag: true } },
      ];
      return changeClubs(pen, swap, 'allowed already');
    }),
  );
}

async function isPlayed(db: LogbookDatabase, clubId: string): Promise<boolean> {
  const [open, closed, rounds] = await Promise.all([db.shots.toArray(), db.closedShots.toArray(), db.rounds.toArray()]);
  const putted = rounds.some((round) => round.holes.some((hole) => hole.putts.some((putt) => putt.clubId === clubId)));
  const hit = [...open, ...closed.flatMap((round) => round.shots)].some((shot) => shot.clubId === clubId);
  return putted || hit;
}

/**
 * Removes a club nobody has played a shot or putt with; one that has been played, or that the round being
 * played was started with, is taken out of the bag.
 */
export function removeClub(
  keeper: Keeper,
  clubId: string,
): Promise<Outcome<'removed' | 'out of bag', Gone | NotValid | ByTheRules>> {
  return keeper.line.after(() =>
    write<'removed' | 'out of bag', Gone | NotValid | ByTheRules>(keeper, async (pen) => {
      const before = await pen.db.clubs.get(clubId);
      if (!before) return (await pen.db.deleted.get(['club', clubId])) ? written('removed') : gone;
      const isOfRound = (await openRoundOf(pen.db))?.bag.includes(clubId) ?? false;
      if (isOfRound || (await isPlayed(pen.db, clubId))) {
        const changed = await changeClubs(pen, [{ clubId, change: { inBag: false } }]);
        return changed.kind === 'refused' ? changed : written('out of bag');
      }
      await pen.db.clubs.delete(clubId);
      await leaveTombstone(pen, 'club', before);
      await pen.remember('remove club', [{ of: 'club', id: clubId, before, after: null }]);
      return written('removed');
    }),
  );
}

/** Begins a bag, with thirteen typical clubs to correct or with none. */
export function startBag(
  keeper: Keeper,
  how: 'typical' | 'nothing',
): Promise<Outcome<readonly Club[], BagNotEmpty | NotValid | ByTheRules>> {
  const forms = how === 'typical' ? typicalBag() : [];
  const ids = forms.map(() => ({ id: keeper.newId(), periodId: keeper.newId() }));
  return keeper.line.after(() =>
    write<readonly Club[], BagNotEmpty | NotValid | ByTheRules>(keeper, async (pen) => {
      const there = await pen.db.clubs.toArray();
      if (there.some((club) => !ids.some(({ id }) => id === club.id))) return refuse({ kind: 'bag not empty' });
      const clubs: Club[] = [];
      for (const [index, { spec, ...form }] of forms.entries()) {
        const { id, periodId } = ids[index];
        const checked = valid(clubSchema, { ...form, id, specPeriods: [{ ...spec, id: periodId }] });
        if (checked.kind === 'refused') return checked;
        clubs.push(pen.stamped(checked.value));
      }
      const held = await clubsHeldBack(
        pen.db,
        clubs.map((after) => ({ before: null, after })),
      );
      if (held) return held;
      await pen.db.clubs.bulkPut(clubs);
      await pen.db.settings.put({ ...(await pen.db.settings.get(ONLY)), key: ONLY, bagStarted: true });
      return written(clubs);
    }),
  );
}
