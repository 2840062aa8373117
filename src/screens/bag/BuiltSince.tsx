import { Choice } from '../parts/Choice.tsx';
import { Field } from '../round/Field.tsx';
import { bagWords } from '../words/bag.ts';
import css from './ClubPage.module.css';

interface Props {
  /** First day of the new build; null: the club was always so. */
  readonly since: string | null;
  readonly today: string;
  readonly isWrong: boolean;
  readonly onChange: (since: string | null) => void;
}

/** Asked when loft, lie, length or shaft were changed: was the record wrong, or is the club another one since a day? */
export function BuiltSince({ since, today, isWrong, onChange }: Props) {
  return (
    <section class={css.built} aria-labelledby="built-since">
      <h2 id="built-since">{bagWords.club.builtTitle}</h2>
      <Choice
        label={bagWords.club.built}
        name="built"
        values={['always', 'since']}
        words={bagWords.club.builtChoices}
        value={since === null ? 'always' : 'since'}
        onChoose={(choice) => onChange(choice === 'always' ? null : today)}
      />
      {since !== null && (
        <Field
          label={bagWords.club.since}
          type="date"
          value={since}
          error={isWrong ? bagWords.club.wrongDay : undefined}
          note={bagWords.club.builtWhy}
          onInput={onChange}
        />
      )}
    </section>
  );
}
