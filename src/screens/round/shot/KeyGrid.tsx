import { useState } from 'preact/hooks';
import { shotWords, soften } from '../../words/shot.ts';
import { Key, type KeyProps } from './Key.tsx';
import css from './KeyGrid.module.css';
import { keyPages } from './keyPages.ts';
import { padRoom } from './padRoom.ts';

/** A key of a grid: its id within the grid, and its face. */
export interface GridKey extends Omit<KeyProps, 'children'> {
  readonly id: string;
  readonly face: string;
}

interface Props {
  readonly keys: readonly GridKey[];
  /** Keys side by side where five of 64 px fit; one less on a narrower screen. */
  readonly columns: 2 | 3 | 4 | 5;
  /** Fills the grid from its end, so that the last keys stand at the thumb. */
  readonly fromEnd?: boolean;
  /** Whether the keys change sides for a left thumb; not where left and right or an order of numbers say something. */
  readonly isMirrored?: boolean;
}

/** Keys in rows. Those that find no room come after a last key that turns to the next page of them. */
export function KeyGrid({ keys, columns, fromEnd = false, isMirrored = true }: Props) {
  const [page, turnTo] = useState(0);
  const { rows, isNarrow } = padRoom.value;
  const across = isNarrow && columns > 3 ? columns - 1 : columns;
  const pages = keyPages(keys, across * rows);
  const shown = pages[page % pages.length];
  const count = shown.length + (pages.length > 1 ? 1 : 0);
  const lead = fromEnd ? (across - (count % across)) % across : 0;
  return (
    <div class={`${css.grid} ${isMirrored ? css.mirrored : ''}`} data-columns={across} data-lead={lead}>
      {shown.map(({ id, face, ...key }) => (
        <Key key={id} {...key}>
          {soften(face)}
        </Key>
      ))}
      {pages.length > 1 && (
        <Key look="quiet" onPress={() => turnTo((page + 1) % pages.length)}>
          {shotWords.keys.otherNumbers}
        </Key>
      )}
    </div>
  );
}
