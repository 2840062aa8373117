import { signal } from '@preact/signals';

/** How many rows and columns of keys fit the part of the screen that a thumb reaches. */
export interface PadRoom {
  readonly rows: 3 | 4 | 5;
  readonly isNarrow: boolean;
}

/*
 * Screen heights from which four and five rows of 64 px keys with 8 px between stand in the lower 60 %
 * above the row of actions (80 px) and the bar of places (56 px), their heading (24 px) included.
 */
const fourRows = matchMedia('(min-height: 748px)');
const fiveRows = matchMedia('(min-height: 868px)');
/** Below it five keys of 64 px do not stand side by side. */
const narrow = matchMedia('(max-width: 359px)');

function measured(): PadRoom {
  return { rows: fiveRows.matches ? 5 : fourRows.matches ? 4 : 3, isNarrow: narrow.matches };
}

/** The room there is now; it follows the screen when it is turned. */
export const padRoom = signal<PadRoom>(measured());

for (const query of [fourRows, fiveRows, narrow]) {
  query.addEventListener('change', () => {
    padRoom.value = measured();
  });
}
