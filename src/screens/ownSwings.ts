import { computed, signal } from '@preact/signals';
import type { OwnSwing } from '../golf/swing.ts';
import { lookedAt } from './openLogbook.ts';

/** The swings of the golfer whose logbook of this phone is shown. */
export const shownSwings = signal<readonly OwnSwing[]>([]);

/** The swing positions, and words for them, of the golfer whose numbers are on the screen. */
export const ownSwings = computed<readonly OwnSwing[]>(
  () => lookedAt.value?.logbook.player.swings ?? shownSwings.value,
);
