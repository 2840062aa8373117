import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { type Claim, saveClaims } from '../../actions/bagChanges.ts';
import type { Keeper } from '../../actions/keeper.ts';
import { type Club, specOn } from '../../golf/club.ts';
import type { Round } from '../../golf/round.ts';
import { clubName } from '../clubName.ts';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { Field } from '../round/Field.tsx';
import { Select } from '../round/Select.tsx';
import { goBack, goTo } from '../route.ts';
import { unit } from '../unit.ts';
import { bagWords } from '../words/bag.ts';
import { words } from '../words.ts';
import { anchorsOf } from './anchorsOf.ts';
import { isBagHeld } from './bagLaw.ts';
import css from './ClubPage.module.css';
import { carryText, readCarry } from './clubText.ts';
import { whyClub } from './whyClub.ts';

interface Props {
  readonly keeper: Keeper;
  readonly clubs: readonly Club[];
  readonly today: string;
  readonly round: Round | null;
}

/** Three carries by the golfer's own word, from which a book without shots can start. */
export function AnchorsPage({ keeper, clubs, today, round }: Props) {
  const { driver, iron, wedges } = useMemo(() => anchorsOf(clubs, today), []);
  const wedgeId = useSignal(wedges.find((club) => club.claimed_m !== null)?.id ?? wedges[1]?.id ?? wedges[0]?.id ?? '');
  const said = useSignal<Readonly<Record<string, string>>>(
    Object.fromEntries(clubs.map((club) => [club.id, carryText(club.claimed_m, unit.peek())])),
  );
  const wrong = useSignal<string | null>(null);
  const trouble = useSignal<string | null>(null);
  const isSaving = useSignal(false);
  const wedge = wedges.find((club) => club.id === wedgeId.value) ?? null;
  const asked = [driver, iron, wedge].filter((club) => club !== null);
  const name = (club: Club) => clubName(club, specOn(club, today));
  const save = async () => {
    const claims: Claim[] = [];
    for (const club of asked) {
      const text = said.value[club.id] ?? '';
      if (text.trim() === carryText(club.claimed_m, unit.value)) continue;
      const claimed_m = readCarry(text, unit.value);
      if (claimed_m === 'wrong') {
        wrong.value = club.id;
        return;
      }
      claims.push({ clubId: club.id, claimed_m });
    }
    isSaving.value = true;
    const saved = await saveClaims(keeper, claims);
    isSaving.value = false;
    if (saved.kind === 'saved') goTo('bag');
    else if (saved.kind === 'unsaved') trouble.value = words.storage.why(saved.why);
    else trouble.value = saved.why.kind === 'not valid' ? bagWords.club.wrong.claimed : whyClub(saved.why);
  };
  const field = (club: Club) => (
    <Field
      label={bagWords.claims.carry(name(club), words.units[unit.value].long)}
      value={said.value[club.id] ?? ''}
      keys="decimal"
      error={wrong.value === club.id ? bagWords.club.wrong.claimed : undefined}
      onInput={(text) => {
        said.value = { ...said.value, [club.id]: text };
        wrong.value = null;
      }}
    />
  );
  return (
    <>
      <PageHead title={bagWords.claims.title} onBack={() => goBack('bag')} />
      <div class={css.sheet}>
        <p>{bagWords.claims.why}</p>
        {isBagHeld(round) ? (
          <p class={css.wrong}>{bagWords.byTheRules}</p>
        ) : asked.length === 0 ? (
          <p>{bagWords.claims.none}</p>
        ) : (
          <>
            {driver && field(driver)}
            {iron && field(iron)}
            {wedges.length > 1 && (
              <Select
                label={bagWords.claims.wedgeWhich}
                values={wedges.map((club) => club.id)}
                words={Object.fromEntries(wedges.map((club) => [club.id, name(club)]))}
                value={wedgeId.value}
                onChoose={(id) => {
                  wedgeId.value = id;
                }}
              />
            )}
            {wedge && <div key={wedge.id}>{field(wedge)}</div>}
            <p class={css.quiet}>{bagWords.claims.gives}</p>
            <p role="alert" class={css.wrong}>
              {trouble.value}
            </p>
            <div class={css.keys}>
              <button
                type="button"
                class={`${press.press} ${press.main}`}
                disabled={isSaving.value}
                onClick={() => void save()}
              >
                {bagWords.claims.save}
              </button>
              <button type="button" class={press.press} onClick={() => goTo('bag')}>
                {bagWords.claims.later}
              </button>
            </div>
          </>
        )}
      </div>
    </>
  );
}
