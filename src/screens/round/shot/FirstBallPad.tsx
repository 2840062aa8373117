import { shotWords } from '../../words/shot.ts';
import { KeyGrid } from './KeyGrid.tsx';

/** What became of a first ball for which a provisional one was played. */
export type FirstBall = 'found' | 'lost' | 'out of bounds' | 'play on';

/** Asks what became of the first ball, after a provisional one was played. */
export function FirstBallPad({ onChoose }: { readonly onChoose: (became: FirstBall) => void }) {
  const { keys, ends } = shotWords;
  return (
    <KeyGrid
      columns={2}
      keys={[
        { id: 'found', face: keys.found, onPress: () => onChoose('found') },
        { id: 'lost', face: ends.lost, onPress: () => onChoose('lost') },
        { id: 'out', face: ends['out of bounds'], onPress: () => onChoose('out of bounds') },
        { id: 'on', face: keys.playOn, look: 'quiet', onPress: () => onChoose('play on') },
      ]}
    />
  );
}
