import { type Club, clubSchema } from '../golf/club.ts';
import { typicalBag } from '../golf/typicalBag.ts';
import { type LogbookDatabase, ONLY } from '../logbook/database.ts';
import type { Image } from '../logbook/undoEntry.ts';
import { leaveTombstone } from './binShot.ts';
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
): Promise<{ readonly kind: 'written'; readonly value: readonly Club[] } | Refused<Gone | NotValid>> {
  const pairs: { before: Club; after: Club }[] = [];
  for (const { clubId, change } of changes) {
    const before = await pen.db.clubs.get(clubId);
    if (!before) return gone;
    const checked = valid(clubSchema, { ...before, ...change });
    if (checked.kind === 'refused') return checked;
    pairs.push({ before, after: pen.stamped(checked.value, before.changedAt) });
  }
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
): Promise<Outcome<readonly Club[], Gone | NotValid>> {
  const changes = claims.map(({ clubId, claimed_m }) => ({ clubId, change: { claimed_m } }));
  return keeper.line.after(() => write<readonly Club[], Gone | NotValid>(keeper, (pen) => changeClubs(pen, changes)));
}

/** Puts a club into the bag or takes it out. */
export function putInBag(
  keeper: Keeper,
  clubId: string,
  inBag: boolean,
): Promise<Outcome<readonly Club[], Gone | NotValid>> {
  const changes = [{ clubId, change: { inBag } }];
  return keeper.line.after(() => write<readonly Club[], Gone | NotValid>(keeper, (pen) => changeClubs(pen, changes)));
}

async function isPlayed(db: LogbookDatabase, clubId: string): Promise<boolean> {
  const [open, closed, rounds] = await Promise.all([db.shots.toArray(), db.closedShots.toArray(), db.rounds.toArray()]);
  const putted = rounds.some((round) => round.holes.some((hole) => hole.putts.some((putt) => putt.clubId === clubId)));
  const hit = [...open, ...closed.flatMap((round) => round.shots)].some((shot) => shot.clubId === clubId);
  return putted || hit;
}

/** Removes a club nobody has played a shot or putt with; one that has been played is taken out of the bag. */
export function removeClub(
  keeper: Keeper,
  clubId: string,
): Promise<Outcome<'removed' | 'out of bag', Gone | NotValid>> {
  return keeper.line.after(() =>
    write<'removed' | 'out of bag', Gone | NotValid>(keeper, async (pen) => {
      const before = await pen.db.clubs.get(clubId);
      if (!before) return (await pen.db.deleted.get(['club', clubId])) ? written('removed') : gone;
      if (await isPlayed(pen.db, clubId)) {
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
): Promise<Outcome<readonly Club[], BagNotEmpty | NotValid>> {
  const forms = how === 'typical' ? typicalBag() : [];
  const ids = forms.map(() => ({ id: keeper.newId(), periodId: keeper.newId() }));
  return keeper.line.after(() =>
    write<readonly Club[], BagNotEmpty | NotValid>(keeper, async (pen) => {
      const there = await pen.db.clubs.toArray();
      if (there.some((club) => !ids.some(({ id }) => id === club.id))) return refuse({ kind: 'bag not empty' });
      const clubs: Club[] = [];
      for (const [index, { spec, ...form }] of forms.entries()) {
        const { id, periodId } = ids[index];
        const checked = valid(clubSchema, { ...form, id, specPeriods: [{ ...spec, id: periodId }] });
        if (checked.kind === 'refused') return checked;
        clubs.push(pen.stamped(checked.value));
      }
      await pen.db.clubs.bulkPut(clubs);
      await pen.db.settings.put({ ...(await pen.db.settings.get(ONLY)), key: ONLY, bagStarted: true });
      return written(clubs);
    }),
  );
}
