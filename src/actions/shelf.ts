import { computed, type ReadonlySignal } from '@preact/signals';
import { permissions } from '../golf/permissions.ts';
import { liveOpenRound, liveSettings } from '../logbook/live.ts';
import { type Keeper, type KeeperOptions, keepLogbook, OWN_LOGBOOK } from './keeper.ts';

/** Name of the demo season in the browser's store. */
export const DEMO_LOGBOOK = 'carrybook-demo';

/**
 * The two logbooks on a phone: the golfer's own, and the demo season when it was loaded. They are two
 * databases, so that the demo can never mix with real shots, nor be exported, merged or left behind with
 * them; removing it empties its own.
 */
export interface Shelf {
  readonly own: Keeper;
  readonly demo: Keeper;
  /** The keeper of the logbook on the screen; screens write through this one. */
  readonly shown: ReadonlySignal<Keeper>;
}

/**
 * Opens the shelf. Which logbook is shown stands in the settings of the own one; while a round by the Rules is
 * open in it, it is the own one whatever they say.
 */
export function openShelf(options: Omit<KeeperOptions, 'name'> = {}): Shelf {
  const own = keepLogbook({ ...options, name: OWN_LOGBOOK });
  const demo = keepLogbook({ ...options, name: DEMO_LOGBOOK });
  const shown = computed(() => {
    const settings = liveSettings(own.connection).value;
    if (settings.kind !== 'ready' || settings.value.showing !== 'demo') return own;
    const open = liveOpenRound(own.connection).value;
    return open.kind === 'ready' && !permissions(open.value?.round ?? null).importing ? own : demo;
  });
  return { own, demo, shown };
}
