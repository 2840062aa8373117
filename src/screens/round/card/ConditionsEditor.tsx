import { useSignal } from '@preact/signals';
import { editRound } from '../../../actions/editRound.ts';
import type { Keeper } from '../../../actions/keeper.ts';
import type { Round } from '../../../golf/round.ts';
import press from '../../parts/Press.module.css';
import { roundWords } from '../../words/round.ts';
import { outcomeTrouble } from '../outcomeTrouble.ts';
import type { ShownUnits } from '../shownUnits.ts';
import { ConditionsFields } from '../start/ConditionsFields.tsx';
import {
  type ConditionNumber,
  type ConditionsForm,
  conditionsFormOf,
  readConditions,
} from '../start/conditionsForm.ts';
import { weatherWords } from '../weatherWords.ts';
import css from './CardPage.module.css';
import { changedConditions } from './changedConditions.ts';

const { card: words, start } = roundWords;

interface Props {
  readonly keeper: Keeper;
  readonly round: Round;
  readonly units: ShownUnits;
}

/** The conditions of a round, put right after it began. Undo takes the change back. */
export function ConditionsEditor({ keeper, round, units }: Props) {
  const stored = conditionsFormOf(round.conditions, units);
  /** What was changed and not kept yet. */
  const changes = useSignal<Partial<ConditionsForm>>({});
  const errors = useSignal<Partial<Record<ConditionNumber, string>>>({});
  const trouble = useSignal<string | null>(null);
  const form = { ...stored, ...changes.value };
  const keep = async () => {
    const read = readConditions(form, units);
    const before = readConditions(stored, units);
    if (read.kind === 'wrong') {
      errors.value = { [read.field]: start.wrong };
      return;
    }
    const conditions =
      before.kind === 'ok' ? changedConditions(round.conditions, before.conditions, read.conditions) : read.conditions;
    trouble.value = outcomeTrouble(await editRound(keeper, round.id, { conditions }));
    if (trouble.value === null) changes.value = {};
  };
  return (
    <details class={css.details}>
      <summary>
        {start.conditions}
        <span class={css.now}>{weatherWords(round.conditions, units) || words.noConditions}</span>
      </summary>
      <div>
        <p role="alert" class={css.wrong}>
          {trouble.value}
        </p>
        <ConditionsFields
          form={form}
          units={units}
          errors={errors.value}
          onChange={(changed) => {
            changes.value = { ...changes.value, ...changed };
            errors.value = {};
          }}
        />
        <div class={css.keys}>
          <button
            type="button"
            class={press.press}
            disabled={Object.keys(changes.value).length === 0}
            onClick={() => void keep()}
          >
            {words.keepConditions}
          </button>
        </div>
      </div>
    </details>
  );
}
