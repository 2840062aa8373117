import { effect, untracked } from '@preact/signals';
import type { Shelf } from '../actions/shelf.ts';
import { permissions } from '../golf/permissions.ts';
import { latestShot, type ShownLogbook, sameRecords, shownLogbook } from '../golf/shownLogbook.ts';
import { liveLogbook, liveOpenRound, livePlayer, liveSettings } from '../logbook/live.ts';
import { openBook } from './openBook.ts';
import { lookedAt, type OpenLogbook, openLogbook } from './openLogbook.ts';
import { shownSwings } from './ownSwings.ts';
import { isQuiet } from './quiet.ts';
import { route } from './route.ts';
import { applySettings } from './theme.ts';
import { chosenUnit, ownUnit } from './unit.ts';

/** Whether the same book follows from both, so that it need not be reckoned anew. */
function isSameBook(one: OpenLogbook | null, other: ShownLogbook, from: OpenLogbook['from']): boolean {
  return (
    one !== null &&
    one.from === from &&
    one.frozen?.roundId === other.frozen?.roundId &&
    (one.frozen === null || one.asOf === other.asOf) &&
    sameRecords(one.logbook, other.logbook)
  );
}

/**
 * Whether anybody looks at numbers, or soon may. While shots are logged the whole logbook is not read anew with
 * each of them; and it is not read while the app starts, so that seasons of shots do not hold up the first tap.
 */
function areNumbersWanted(isPractice: boolean): boolean {
  if (route.value[0] === 'yardages' || route.value[0] === 'bag') return true;
  return openBook.value.kind !== 'ready' && (isPractice || isQuiet.value);
}

/**
 * Keeps the open logbook in step with the shelf: the file looked at, else the logbook shown as far as
 * numbers may be reckoned from it now. Unit, hand and light follow the golfer. Called once, by the page.
 */
export function followShelf(shelf: Shelf): void {
  effect(() => {
    // A file that is looked at is a book of somebody else, or another reading of one's own: not in a round by the Rules.
    if (!lookedAt.value) return;
    const open = liveOpenRound(shelf.own.connection).value;
    if (open.kind !== 'ready' || permissions(open.value?.round ?? null).importing) return;
    chosenUnit.value = null;
    lookedAt.value = null;
  });
  effect(() => {
    const file = lookedAt.value;
    if (file) {
      openLogbook.value = file;
      return;
    }
    const settings = liveSettings(shelf.own.connection).value;
    const { connection, clock } = shelf.shown.value;
    const open = liveOpenRound(connection).value;
    // The wedge ladder is laid out by the numbers.
    const isPractice = open.kind === 'ready' && open.value?.round.play === 'practice ground';
    if (settings.kind !== 'ready' || !areNumbersWanted(isPractice)) return;
    const isDemo = connection === shelf.demo.connection;
    const logbook = liveLogbook(connection).value;
    const exported = liveSettings(connection).value;
    if (logbook.kind !== 'ready' || open.kind !== 'ready' || exported.kind !== 'ready') return;
    untracked(() => {
      const now = new Date(clock.now()).toISOString();
      // The demo season stays in its own time: it is of the day of its file, or of the last shot added to it.
      const demoDays = [exported.value.lastBackupAt, latestShot(logbook.value)].filter((day) => day !== null).sort();
      const asOf = isDemo ? (demoDays.at(-1) ?? now) : now;
      const shown = shownLogbook(logbook.value, open.value?.round ?? null, asOf);
      if (isSameBook(openLogbook.value, shown, 'phone')) return;
      openLogbook.value = { ...shown, from: 'phone' };
    });
  });
  effect(() => {
    const player = livePlayer(shelf.shown.value.connection).value;
    if (player.kind !== 'ready') return;
    ownUnit.value = player.value.units;
    shownSwings.value = player.value.swings;
    document.documentElement.dataset.hand = player.value.hand;
  });
  effect(() => {
    const settings = liveSettings(shelf.own.connection).value;
    if (settings.kind === 'ready') untracked(() => applySettings(settings.value.theme));
  });
}
