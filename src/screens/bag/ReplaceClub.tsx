import type { Club, SpecPeriod } from '../../golf/club.ts';
import { clubName } from '../clubName.ts';
import press from '../parts/Press.module.css';
import { bagWords } from '../words/bag.ts';
import css from './BagPage.module.css';

const { replace: words } = bagWords;

interface Built {
  readonly club: Club;
  readonly spec: SpecPeriod;
}

interface Props {
  /** The club that would come into the bag. */
  readonly by: Built;
  readonly carried: readonly Built[];
  readonly onChoose: (clubId: string) => void;
  readonly onNone: () => void;
}

/** Asks which club was damaged in the round, as only such a one may be replaced in a round by the Rules. */
export function ReplaceClub({ by, carried, onChoose, onNone }: Props) {
  return (
    <section aria-labelledby="replace-club">
      <h2 class={css.title} id="replace-club">
        {words.title(clubName(by.club, by.spec))}
      </h2>
      <p class={css.note}>{words.why}</p>
      <div class={css.keys}>
        {carried.map(({ club, spec }) => (
          <button key={club.id} type="button" class={press.press} onClick={() => onChoose(club.id)}>
            {words.which(clubName(club, spec))}
          </button>
        ))}
        <button type="button" class={press.press} onClick={onNone}>
          {words.none}
        </button>
      </div>
    </section>
  );
}
