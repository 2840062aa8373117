import type { Round } from '../../../golf/round.ts';
import type { KnownBy } from '../../../golf/shot.ts';

/** How the golfer last said that distances are known, since the app was opened. */
let last: KnownBy = 'laser';

/** Remembers how distances are known, for the shots after. */
export function rememberWay(by: KnownBy): void {
  last = by;
}

/** How the distance to a flag is known unless the golfer says otherwise: as last, by laser at first, by paces where no device is allowed. */
export function wayKnown(round: Pick<Round, 'distanceDevices'>): KnownBy {
  return last === 'laser' && !round.distanceDevices ? 'paced' : last;
}
