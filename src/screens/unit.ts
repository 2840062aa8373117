import { computed, signal } from '@preact/signals';
import type { DistanceUnit } from './distance.ts';
import { openLogbook } from './openLogbook.ts';

/** Another unit than the golfer's own, chosen on this screen; null: the golfer's own. */
export const chosenUnit = signal<DistanceUnit | null>(null);

/** The unit that distances are shown in: as chosen here, else as the logbook's golfer has it. */
export const unit = computed<DistanceUnit>(
  () => chosenUnit.value ?? openLogbook.value?.logbook.player.units ?? 'yards',
);
