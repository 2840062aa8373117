import { type Club, clubSchema, specOn } from '../golf/club.ts';
import { type ClubForm, periodsAfter } from '../golf/clubForm.ts';
import { NEVER_CHANGED } from '../golf/instant.ts';
import { putShot, shotsOfRound } from '../logbook/shotStore.ts';
import type { Image } from '../logbook/undoEntry.ts';
import { localDay } from './clock.ts';
import { type ByTheRules, clubsHeldBack } from './heldBack.ts';
import type { Keeper } from './keeper.ts';
import { type Gone, gone, type NotValid, type Outcome, written } from './outcome.ts';
import type { Pen } from './pen.ts';
import { valid } from './valid.ts';
import { write } from './write.ts';

/**
 * Saves a club as entered, a new one when it has no id.
 *
 * @param changedFrom first day (`YYYY-MM-DD`) of a new build: a changed loft, lie, length, bounce, shaft
 *   or head starts a new spec period, and shots of rounds since that day go over to it. Absent: the
 *   record is corrected, and the club was always so.
 *
 * During a round by the Rules a build stays as it is (4.1a(3)), and so does what is said of the club's
 * numbers; a new club comes into the bag only if one may be added (4.1b).
 */
export function saveClub(
  keeper: Keeper,
  form: ClubForm,
  changedFrom: string | null = null,
): Promise<Outcome<Club, Gone | NotValid | ByTheRules>> {
  const id = form.id ?? keeper.newId();
  const periodId = keeper.newId();
  const today = localDay(keeper.clock.now());
  return keeper.line.after(() =>
    write<Club, Gone | NotValid | ByTheRules>(keeper, async (pen) => {
      const before = (await pen.db.clubs.get(id)) ?? null;
      if (!before && form.id !== null) return gone;
      const { spec, ...said } = form;
      const specPeriods = before
        ? periodsAfter(before, spec, changedFrom, today, periodId)
        : [{ ...spec, id: periodId, from: changedFrom ?? NEVER_CHANGED.slice(0, 10) }];
      const checked = valid(clubSchema, { ...before, ...said, id, specPeriods });
      if (checked.kind === 'refused') return checked;
      const held = await clubsHeldBack(pen.db, [{ before, after: checked.value }]);
      if (held) return held;
      const club = pen.stamped(checked.value, ...(before ? [before.changedAt] : []));
      await pen.db.clubs.put(club);
      const shots = before && specPeriods.length > before.specPeriods.length ? await rebuilt(pen, club) : [];
      await pen.remember('save club', [{ of: 'club', id, before, after: club.changedAt }, ...shots]);
      return written(club);
    }),
  );
}

/** Gives the shots of the club the spec period of their day, and says what they were. */
async function rebuilt(pen: Pen, club: Club): Promise<Image[]> {
  const images: Image[] = [];
  const known = new Set(club.specPeriods.map((period) => period.id));
  for (const round of await pen.db.rounds.toArray()) {
    const specId = specOn(club, round.date).id;
    for (const before of await shotsOfRound(pen.db, round.id)) {
      const stale = before.clubId === club.id && before.specId !== specId;
      if (!stale || (before.specId !== null && !known.has(before.specId))) continue;
      const after = pen.stamped({ ...before, specId }, before.changedAt);
      await putShot(pen.db, after);
      images.push({ of: 'shot', id: before.id, roundId: round.id, before, after: after.changedAt });
    }
  }
  return images;
}
