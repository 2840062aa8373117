import type { Club, SpecPeriod } from '../golf/club.ts';
import type { Swing } from '../golf/swing.ts';
import { ownSwings } from './ownSwings.ts';
import { words } from './words.ts';

/** The club as the golfer says it; without a name of its own, its kind and loft: `Wedge 52°`. */
export function clubName(club: Club, spec: SpecPeriod): string {
  return club.name || `${words.kinds[club.kind]} ${words.loft(spec.loft_deg)}`;
}

/** The swing length in words: `full`, or the clock position with the golfer's own word for it. */
export function swingName(swing: Swing): string {
  if (swing === 'full') return words.swings.full;
  const label = ownSwings.value.find((own) => own.swing === swing)?.label;
  return label ? words.swings.labelled(swing, label) : swing;
}
