import type { Swing } from '../../../golf/swing.ts';
import { swingsOffered } from '../../../golf/wedgeLadder.ts';
import { swingName } from '../../clubName.ts';
import { ownSwings } from '../../ownSwings.ts';
import { shotWords } from '../../words/shot.ts';
import type { BagClub } from './clubsOfBag.ts';
import { type GridKey, KeyGrid } from './KeyGrid.tsx';

interface Props {
  readonly bag: readonly BagClub[];
  readonly chosen: string | null;
  readonly onChoose: (clubId: string) => void;
}

/** The bag in loft order; filled from the end, so that the wedges stand at the thumb. */
export function ClubPad({ bag, chosen, onChoose }: Props) {
  const keys = bag.map(
    ({ id, name }): GridKey => ({ id, face: name, isPressed: id === chosen, onPress: () => onChoose(id) }),
  );
  return <KeyGrid keys={keys} columns={5} fromEnd />;
}

interface SwingProps {
  /** The club just chosen; undefined: none of the bag. */
  readonly club: BagClub | undefined;
  readonly chosen: Swing;
  readonly onChoose: (swing: Swing) => void;
  /** Back to the clubs. */
  readonly onClubs: () => void;
}

/** How far back the club just chosen was swung, by the clock position of the lead arm. */
export function SwingPad({ club, chosen, onChoose, onClubs }: SwingProps) {
  const swings = swingsOffered(club ?? { kind: 'wedge', notPlayed: [] }, ownSwings.value);
  const own = swings.includes(chosen) ? [] : [chosen];
  const keys = [...swings, ...own].map(
    (swing): GridKey => ({
      id: swing,
      face: swing === 'full' ? shotWords.swing.full : swingName(swing),
      look: 'figure',
      onPress: () => onChoose(swing),
    }),
  );
  const clubs: GridKey = { id: 'clubs', face: shotWords.keys.otherClub, look: 'quiet', onPress: onClubs };
  return <KeyGrid keys={[...keys, clubs]} columns={2} isMirrored={false} />;
}
