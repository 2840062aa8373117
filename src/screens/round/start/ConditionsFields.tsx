import { compassPoints } from '../../../golf/compass.ts';
import { windForces } from '../../../golf/windForce.ts';
import { Choice } from '../../parts/Choice.tsx';
import { roundWords } from '../../words/round.ts';
import { Field } from '../Field.tsx';
import { Select } from '../Select.tsx';
import type { ShownUnits } from '../shownUnits.ts';
import type { ConditionNumber, ConditionsForm } from './conditionsForm.ts';
import css from './StartRound.module.css';

const { start: words } = roundWords;
const hours = ['12', '1', '2', '3', '4', '5', '6', '7', '8', '9', '10', '11'];
const forceWords = Object.fromEntries(windForces.map((force) => [String(force), words.forces[force]]));

interface Props {
  readonly form: ConditionsForm;
  readonly units: ShownUnits;
  readonly errors: Readonly<Partial<Record<ConditionNumber, string>>>;
  readonly onChange: (changes: Partial<ConditionsForm>) => void;
}

/** Weather and ground of the day; every field may stay open. */
export function ConditionsFields({ form, units, errors, onChange }: Props) {
  const points = Object.fromEntries(compassPoints.map((point) => [point, point]));
  return (
    <>
      <p class={css.quiet}>{words.conditionsNote}</p>
      <div class={css.pair}>
        <Field
          label={words.temperature(units.temperature)}
          value={form.temperature}
          keys="text"
          error={errors.temperature}
          onInput={(temperature) => onChange({ temperature })}
        />
        <Field
          label={words.altitude(words.altitudeUnits[units.distance])}
          value={form.altitude}
          keys="text"
          error={errors.altitude}
          onInput={(altitude) => onChange({ altitude })}
        />
        <Field
          label={words.pressure}
          value={form.pressure}
          keys="decimal"
          error={errors.pressure}
          onInput={(pressure) => onChange({ pressure })}
        />
      </div>
      <Choice
        label={words.wind}
        name="wind"
        values={['open', 'none', 'compass', 'clock']}
        words={words.windChoices}
        value={form.wind}
        onChoose={(wind) => onChange({ wind })}
      />
      {(form.wind === 'compass' || form.wind === 'clock') && (
        <div class={css.pair}>
          {form.wind === 'compass' ? (
            <Select
              label={words.windFrom}
              values={compassPoints}
              words={points}
              value={form.windFrom}
              onChoose={(windFrom) => onChange({ windFrom })}
            />
          ) : (
            <>
              <Select
                label={words.clock}
                values={hours}
                words={Object.fromEntries(hours.map((hour) => [hour, words.oClock(hour)]))}
                value={form.windClock}
                note={words.clockSays}
                onChoose={(windClock) => onChange({ windClock })}
              />
              <Select
                label={words.heading}
                values={compassPoints}
                words={points}
                value={form.heading}
                onChoose={(heading) => onChange({ heading })}
              />
            </>
          )}
          <Select
            label={words.force}
            values={windForces.map(String)}
            words={forceWords}
            value={String(form.force)}
            onChoose={(force) => onChange({ force: windForces.find((each) => String(each) === force) ?? form.force })}
          />
          <Field
            label={words.windSpeed(units.windSpeed)}
            value={form.windSpeed}
            keys="decimal"
            note={words.windSpeedNote}
            error={errors.windSpeed}
            onInput={(windSpeed) => onChange({ windSpeed })}
          />
        </div>
      )}
      <Choice
        label={words.ground}
        name="ground"
        values={['soft', 'normal', 'firm']}
        words={words.grounds}
        value={form.ground}
        onChoose={(ground) => onChange({ ground })}
      />
    </>
  );
}
