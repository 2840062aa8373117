import { useSignal } from '@preact/signals';
import type { Keeper } from '../../../actions/keeper.ts';
import { savePlayer } from '../../../actions/saveSettings.ts';
import type { Club } from '../../../golf/club.ts';
import { type OwnSwing, readSwing } from '../../../golf/swing.ts';
import press from '../../parts/Press.module.css';
import { practiceWords as words } from '../../words/practice.ts';
import { words as allWords } from '../../words.ts';
import { Field } from '../Field.tsx';
import css from './WedgeLadder.module.css';

interface Props {
  readonly keeper: Keeper;
  readonly own: readonly OwnSwing[];
  /** Clubs that are not on the ladder. */
  readonly others: readonly Club[];
  readonly nameOf: (club: Club) => string;
  readonly onClub: (clubId: string) => void;
}

/** What widens the ladder: clubs beside the wedges, and swing positions of the golfer's own with a word for each. */
export function OwnSwings({ keeper, own, others, nameOf, onClub }: Props) {
  const position = useSignal('');
  const label = useSignal('');
  const wrong = useSignal<string | null>(null);
  const keep = async (ownSwings: readonly OwnSwing[]) => {
    const outcome = await savePlayer(keeper, { swings: [...ownSwings] });
    if (outcome.kind === 'refused') wrong.value = words.ownSwing.wrong;
    else wrong.value = outcome.kind === 'saved' ? null : allWords.storage.why(outcome.why);
    return outcome.kind === 'saved';
  };
  const add = async () => {
    const swing = readSwing(position.value);
    if (swing === null) wrong.value = words.ownSwing.wrong;
    else if (own.some((each) => each.swing === swing)) wrong.value = words.ownSwing.known;
    else if (await keep([...own, { swing, label: label.value.trim() }])) {
      position.value = '';
      label.value = '';
    }
  };
  return (
    <>
      {others.length > 0 && (
        <section class={css.section} aria-labelledby="other-clubs">
          <h2 id="other-clubs">{words.otherClub}</h2>
          <div class={css.clubs}>
            {others.map((club) => (
              <button key={club.id} type="button" class={press.press} onClick={() => onClub(club.id)}>
                {nameOf(club)}
              </button>
            ))}
          </div>
        </section>
      )}
      <section class={css.section} aria-labelledby="own-swing">
        <h2 id="own-swing">{words.ownSwing.title}</h2>
        <p class={css.quiet}>{words.ownSwing.note}</p>
        <div class={css.pair}>
          <Field
            label={words.ownSwing.position}
            value={position.value}
            note={words.ownSwing.positionNote}
            error={wrong.value ?? undefined}
            maxLength={5}
            onInput={(value) => {
              position.value = value;
              wrong.value = null;
            }}
          />
          <Field
            label={words.ownSwing.label}
            value={label.value}
            maxLength={20}
            onInput={(value) => {
              label.value = value;
            }}
          />
        </div>
        <div class={css.clubs}>
          <button type="button" class={press.press} onClick={() => void add()}>
            {words.ownSwing.add}
          </button>
          {own.map(({ swing, label }) => (
            <button
              key={swing}
              type="button"
              class={press.press}
              onClick={() => void keep(own.filter((each) => each.swing !== swing))}
            >
              {words.ownSwing.remove(label ? `${swing} (${label})` : swing)}
            </button>
          ))}
        </div>
      </section>
    </>
  );
}
