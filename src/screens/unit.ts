import { computed, signal } from '@preact/signals';
import type { DistanceUnit } from './distance.ts';
import { lookedAt } from './openLogbook.ts';

/** The unit of the golfer whose logbook is on this phone. */
export const ownUnit = signal<DistanceUnit>('yards');

/** Another unit than a file's golfer has, chosen while looking at it; null: that golfer's own. */
export const chosenUnit = signal<DistanceUnit | null>(null);

/** The unit that distances are shown in. */
export const unit = computed<DistanceUnit>(() =>
  lookedAt.value ? (chosenUnit.value ?? lookedAt.value.logbook.player.units) : ownUnit.value,
);
