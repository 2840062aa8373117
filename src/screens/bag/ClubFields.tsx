import { clubKinds } from '../../golf/club.ts';
import { WEDGE_SWINGS } from '../../golf/swing.ts';
import { Choice } from '../parts/Choice.tsx';
import { Field } from '../round/Field.tsx';
import { Select } from '../round/Select.tsx';
import { unit } from '../unit.ts';
import { bagWords } from '../words/bag.ts';
import { words as allWords } from '../words.ts';
import css from './ClubPage.module.css';
import type { ClubNumber, ClubText } from './clubText.ts';

const { club: words } = bagWords;
const swings = [...WEDGE_SWINGS, 'full'] as const;

interface Props {
  readonly text: ClubText;
  readonly wrong: ClubNumber | 'since' | null;
  /** Only what is said of the bag may change: a round by the Rules is being played. */
  readonly isHeld: boolean;
  readonly onChange: (changes: Partial<ClubText>) => void;
}

/** The fields of a club: what it is, its loft, and what may be told beside it. */
export function ClubFields({ text, wrong, isHeld, onChange }: Props) {
  const number = (field: ClubNumber, label: string, note?: string) => (
    <Field
      label={label}
      value={text[field]}
      keys="decimal"
      note={note}
      error={wrong === field ? words.wrong[field] : undefined}
      onInput={(value) => onChange({ [field]: value })}
    />
  );
  const place = (
    <Choice
      label={words.place}
      name="place"
      values={['in', 'out']}
      words={words.places}
      value={text.inBag ? 'in' : 'out'}
      onChoose={(choice) => onChange({ inBag: choice === 'in' })}
    />
  );
  if (isHeld) return place;
  const isPutter = text.kind === 'putter';
  const isWedge = text.kind === 'wedge';
  return (
    <>
      <div class={css.pair}>
        <Select
          label={words.kind}
          values={clubKinds}
          words={allWords.kinds}
          value={text.kind}
          onChoose={(kind) => onChange({ kind })}
        />
        <Field
          label={words.name}
          value={text.name}
          maxLength={60}
          note={words.nameNote}
          onInput={(name) => onChange({ name })}
        />
      </div>
      <div class={css.pair}>
        {number('loft', words.loft)}
        {isPutter && number('length', words.length, words.optional)}
        {!isPutter && number('claimed', words.claimed(allWords.units[unit.value].long), words.claimedNote)}
      </div>
      {place}
      {isWedge && (
        <fieldset class={css.swings}>
          <legend>{words.notPlayed}</legend>
          {swings.map((swing) => (
            <label key={swing}>
              <input
                type="checkbox"
                checked={text.notPlayed.includes(swing)}
                onChange={(event) => {
                  const rest = text.notPlayed.filter((each) => each !== swing);
                  onChange({ notPlayed: event.currentTarget.checked ? [...rest, swing] : rest });
                }}
              />
              <span>{words.swings[swing] ?? swing}</span>
            </label>
          ))}
          <p class={css.quiet}>{words.notPlayedNote}</p>
        </fieldset>
      )}
      <details class={css.fold} open={wrong === 'lie' || wrong === 'length' || wrong === 'bounce' || undefined}>
        <summary>{words.details}</summary>
        <div>
          <div class={css.pair}>
            {number('lie', words.lie, words.optional)}
            {!isPutter && number('length', words.length, words.optional)}
            {isWedge && number('bounce', words.bounce, words.optional)}
          </div>
          <Field
            label={words.shaft}
            value={text.shaft}
            maxLength={60}
            note={words.optional}
            onInput={(shaft) => onChange({ shaft })}
          />
          <Field label={words.note} value={text.note} maxLength={2000} onInput={(note) => onChange({ note })} />
        </div>
      </details>
    </>
  );
}
