import { useSignal } from '@preact/signals';
import type { Keeper } from '../../../actions/keeper.ts';
import { type HoleChanges, setHole } from '../../../actions/setHole.ts';
import { changePutts } from '../../../golf/changePutts.ts';
import type { Hole } from '../../../golf/hole.ts';
import { metres } from '../../../units/metres.ts';
import { metresFromYards, yards } from '../../../units/yards.ts';
import { wholeDistance } from '../../distance.ts';
import { Choice } from '../../parts/Choice.tsx';
import { roundWords } from '../../words/round.ts';
import { words as allWords } from '../../words.ts';
import { Field } from '../Field.tsx';
import { outcomeTrouble } from '../outcomeTrouble.ts';
import { Stepper } from '../Stepper.tsx';
import type { ShownUnits } from '../shownUnits.ts';
import css from './HolePage.module.css';

const { hole: words } = roundWords;

const pars = ['open', '3', '4', '5', '6'] as const;

/** Most putts and penalty strokes offered by steps; more than any golfer cares to count. */
const MOST_STEPS = 20;

/** A whole number as typed; null: nothing; `wrong`: something else. */
function typedWhole(text: string): number | null | 'wrong' {
  const trimmed = text.trim();
  if (trimmed === '') return null;
  return /^\d{1,4}$/.test(trimmed) ? Number(trimmed) : 'wrong';
}

interface Props {
  readonly keeper: Keeper;
  readonly roundId: string;
  readonly hole: Hole;
  /** The putter in the bag; null: none. */
  readonly putterId: string | null;
  readonly units: ShownUnits;
}

/** Par, length and how the hole ended, each changed in its place. */
export function HoleFacts({ keeper, roundId, hole, putterId, units }: Props) {
  const trouble = useSignal<Partial<Record<'length' | 'strokes' | 'any', string>>>({});
  const set = async (changes: HoleChanges, field: 'length' | 'strokes' | 'any' = 'any') => {
    const says = outcomeTrouble(await setHole(keeper, roundId, hole.number, changes));
    trouble.value = says === null ? {} : { [field]: says };
    return says === null;
  };
  const setNumber = (field: 'length' | 'strokes', text: string) => {
    const typed = typedWhole(text);
    if (typed === 'wrong') {
      trouble.value = { [field]: words.wrong };
      return;
    }
    if (field === 'strokes') void set({ strokes: typed }, field);
    else {
      const length_m =
        typed === null ? null : units.distance === 'yards' ? metresFromYards(yards(typed)) : metres(typed);
      void set({ length_m }, field);
    }
  };
  return (
    <div class={css.facts}>
      <p role="alert" class={css.open}>
        {trouble.value.any}
      </p>
      <Choice
        label={words.par}
        name="par"
        values={pars}
        words={{ open: words.parOpen, '3': '3', '4': '4', '5': '5', '6': '6' }}
        value={pars.find((par) => par === String(hole.par)) ?? 'open'}
        onChoose={(par) => void set({ par: par === 'open' ? null : Number(par) })}
      />
      <div class={css.pair}>
        <Field
          label={words.length(allWords.units[units.distance].long)}
          value={hole.length_m === null ? '' : wholeDistance(hole.length_m, units.distance).replace(/\D/g, '')}
          keys="numeric"
          error={trouble.value.length}
          onCommit={(text) => setNumber('length', text)}
        />
        <Field
          label={words.noted}
          value={hole.strokes === null ? '' : String(hole.strokes)}
          keys="numeric"
          note={words.notedNote}
          error={trouble.value.strokes}
          onCommit={(text) => setNumber('strokes', text)}
        />
      </div>
      <Choice
        label={words.ended}
        name="result"
        values={['played', 'picked up', 'conceded']}
        words={words.results}
        value={hole.result}
        onChoose={(result) => void set({ result })}
      />
      <div class={css.pair}>
        <Stepper
          label={words.puttsInAll}
          value={hole.putts.length}
          most={MOST_STEPS}
          onStep={(count) => set({ putts: changePutts(hole.putts, count, putterId) })}
        />
        <Stepper
          label={words.penalties}
          value={hole.penalties}
          most={MOST_STEPS}
          note={words.penaltiesNote}
          onStep={(penalties) => set({ penalties })}
        />
      </div>
    </div>
  );
}
