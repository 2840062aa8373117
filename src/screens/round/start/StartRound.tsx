import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { Keeper } from '../../../actions/keeper.ts';
import { bagGate } from '../../../golf/bagGate.ts';
import type { Club } from '../../../golf/club.ts';
import { rememberedStart } from '../../../golf/newRound.ts';
import type { Round } from '../../../golf/round.ts';
import { backupDue } from '../../more/backupDue.ts';
import { Choice } from '../../parts/Choice.tsx';
import { InstallHint } from '../../parts/InstallHint.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import press from '../../parts/Press.module.css';
import { addressOf } from '../../route.ts';
import { noPhoneWords as noPhone } from '../../words/noPhone.ts';
import { roundWords } from '../../words/round.ts';
import { Field } from '../Field.tsx';
import type { ShownUnits } from '../shownUnits.ts';
import { weatherWords } from '../weatherWords.ts';
import { BagLine } from './BagLine.tsx';
import { beginRound } from './beginRound.ts';
import { ConditionsFields } from './ConditionsFields.tsx';
import { earlierCourses } from './earlierCourses.ts';
import { NoPhone } from './NoPhone.tsx';
import css from './StartRound.module.css';
import { type NumberField, readStart, type StartForm, startFormOf } from './startForm.ts';

const { start: words } = roundWords;

interface Props {
  readonly keeper: Keeper;
  readonly rounds: readonly Round[];
  readonly clubs: readonly Club[];
  readonly units: ShownUnits;
  /** When a backup was last made; null: never. */
  readonly lastBackupAt: string | null;
}

/** The form that a round starts from. Everything may stay as it is remembered. */
export function StartRound({ keeper, rounds, clubs, units, lastBackupAt }: Props) {
  const remembered = useMemo(() => startFormOf(rememberedStart(rounds), units), []);
  const form = useSignal<StartForm>(remembered);
  const errors = useSignal<Partial<Record<NumberField, string>>>({});
  const trouble = useSignal<string | null>(null);
  const isStarting = useSignal(false);
  const arePhonesAllowed = useSignal(true);
  const { value } = form;
  const isPractice = value.play === 'practice ground';
  const isOnPaper = !isPractice && !arePhonesAllowed.value;
  const due = backupDue(rounds, lastBackupAt, new Date(keeper.clock.now()).toISOString());
  const inBag = clubs.filter((club) => club.inBag);
  const gate = bagGate(clubs);
  const change = (changes: Partial<StartForm>) => {
    form.value = { ...form.value, ...changes };
    errors.value = {};
    trouble.value = null;
  };
  const read = readStart(value, units);
  const start = async () => {
    if (isStarting.value) return;
    if (read.kind === 'wrong') {
      errors.value = { [read.field]: words.wrong };
      return;
    }
    isStarting.value = true;
    const begun = isOnPaper
      ? await beginRound(keeper, { ...read.start, distanceDevices: false }, read.bearing_deg, 'afterwards')
      : await beginRound(keeper, read.start, read.bearing_deg);
    isStarting.value = false;
    if (begun.kind === 'begun') return;
    trouble.value = begun.says;
    if (begun.field) errors.value = { [begun.field]: words.outside };
  };
  const courses = earlierCourses(rounds).filter(
    (each) => each.course !== value.course.trim() || each.tees !== value.tees.trim(),
  );
  return (
    <>
      <PageHead title={isPractice ? words.titlePractice : words.title} />
      <div class={css.sheet}>
        <section class={css.group}>
          <Choice
            label={words.how}
            name="play"
            values={['rules', 'casual', 'practice ground']}
            words={words.plays}
            value={value.play}
            onChoose={(play) => change({ play })}
          />
          <p class={css.quiet}>{words.says[value.play]}</p>
          {value.play === 'rules' && (
            <a class={css.link} href={addressOf('round', 'referee')}>
              {roundWords.referee}
            </a>
          )}
        </section>
        <section class={css.group}>
          <div class={css.pair}>
            <Field label={words.course} value={value.course} maxLength={60} onInput={(course) => change({ course })} />
            {!isPractice && (
              <Field label={words.tees} value={value.tees} maxLength={60} onInput={(tees) => change({ tees })} />
            )}
          </div>
          {courses.length > 0 && (
            <fieldset class={css.earlier}>
              <legend>{words.earlier}</legend>
              <div class={css.keys}>
                {courses.slice(0, 4).map(({ course, tees }) => (
                  <button
                    key={`${course} ${tees}`}
                    type="button"
                    class={press.press}
                    onClick={() => change({ course, tees })}
                  >
                    {[course, tees].filter((part) => part !== '').join(', ')}
                  </button>
                ))}
              </div>
            </fieldset>
          )}
        </section>
        {isPractice ? (
          <Choice
            label={words.balls}
            name="balls"
            values={['own', 'range']}
            words={words.ballChoices}
            value={value.ball}
            onChoose={(ball) => change({ ball })}
          />
        ) : (
          <section class={css.pair}>
            <Choice
              label={words.holes}
              name="holes"
              values={['9', '18']}
              words={words.holeChoices}
              value={value.holes}
              onChoose={(holes) => change({ holes })}
            />
            <Field
              label={words.first}
              value={value.startHole}
              keys="numeric"
              error={errors.value.startHole}
              onInput={(startHole) => change({ startHole })}
            />
          </section>
        )}
        <BagLine clubs={inBag} gate={gate} isByTheRules={value.play === 'rules'} />
        {!isPractice && (
          <Choice
            label={noPhone.phones}
            name="phones"
            values={['yes', 'no']}
            words={noPhone.choices}
            value={isOnPaper ? 'no' : 'yes'}
            onChoose={(choice) => {
              arePhonesAllowed.value = choice === 'yes';
            }}
          />
        )}
        {isOnPaper && <NoPhone isStarting={isStarting.value} onEnter={() => void start()} />}
        {!isPractice && !isOnPaper && (
          <section class={css.group}>
            <Choice
              label={words.devices}
              name="devices"
              values={['yes', 'no']}
              words={words.deviceChoices}
              value={value.distanceDevices ? 'yes' : 'no'}
              onChoose={(choice) => change({ distanceDevices: choice === 'yes' })}
            />
            {!value.distanceDevices && <p class={css.quiet}>{words.devicesSay.no}</p>}
          </section>
        )}
        <details class={css.fold}>
          <summary>
            <strong>{words.conditions}</strong>
            <span class={css.quiet}>{read.kind === 'ok' && weatherWords(read.start.conditions, units)}</span>
          </summary>
          <div>
            <ConditionsFields form={value} units={units} errors={errors.value} onChange={change} />
          </div>
        </details>
        {due.isDue && (
          <p>
            {words.backupDue(due.rounds)}{' '}
            <a class={css.link} href={addressOf('more')}>
              {words.toBackup}
            </a>
          </p>
        )}
        {rounds.length === 0 && <InstallHint />}
        {rounds.length > 0 && (
          <a class={press.press} href={addressOf('round', 'rounds')}>
            {roundWords.rounds.title}
          </a>
        )}
        <div class={css.go}>
          <p role="alert" class={css.wrong}>
            {trouble.value}
          </p>
          {!isOnPaper && (
            <button
              type="button"
              class={`${press.press} ${press.main}`}
              disabled={isStarting.value}
              onClick={() => void start()}
            >
              {isStarting.value ? words.starting : isPractice ? words.goPractice : words.go}
            </button>
          )}
        </div>
      </div>
    </>
  );
}
