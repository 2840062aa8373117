import { useSignal } from '@preact/signals';
import { deleteShot } from '../../../actions/deleteShot.ts';
import type { Keeper } from '../../../actions/keeper.ts';
import { withUnsaved } from '../../../actions/withUnsaved.ts';
import { playingNumbers } from '../../../golf/shotOrder.ts';
import type { RoundWithShots } from '../../../logbook/live.ts';
import { PageHead } from '../../parts/PageHead.tsx';
import press from '../../parts/Press.module.css';
import { addressOf, goBack } from '../../route.ts';
import { roundWords } from '../../words/round.ts';
import { outcomeTrouble } from '../outcomeTrouble.ts';
import playCss from '../PlayPage.module.css';
import { ShotPage } from '../shot/ShotPage.tsx';
import css from './ShotEditPage.module.css';

const { shot: words } = roundWords;

interface Props {
  readonly keeper: Keeper;
  readonly of: RoundWithShots;
  readonly shotId: string;
}

/** A logged shot, to be changed, moved or deleted. */
export function ShotEditPage({ keeper, of: { round, shots }, shotId }: Props) {
  const trouble = useSignal<string | null>(null);
  const all = withUnsaved(keeper.unsaved.value, round.id, shots);
  const shot = all.find((each) => each.id === shotId);
  const leave = () => goBack('round', 'card', round.id);
  if (!shot) {
    return (
      <>
        <PageHead title={roundWords.title} onBack={leave} />
        <p role="alert">{words.gone}</p>
      </>
    );
  }
  const number = playingNumbers(all).get(shot.id) ?? null;
  const remove = async () => {
    trouble.value = outcomeTrouble(await deleteShot(keeper, shot));
    if (trouble.value === null) leave();
  };
  const title = round.play === 'practice ground' ? words.titlePractice(number) : words.title(shot.hole, number);
  return (
    <div class={playCss.play}>
      <header class={css.head}>
        <h1>{title}</h1>
        <a class={press.press} href={addressOf('round', 'move', round.id, shot.id)}>
          {words.move}
        </a>
        <button type="button" class={press.press} onClick={() => void remove()}>
          {words.delete}
        </button>
      </header>
      <p role="alert" class={css.wrong}>
        {trouble.value}
      </p>
      <ShotPage
        key={shot.id}
        keeper={keeper}
        round={round}
        shots={shots}
        hole={shot.hole}
        editing={shot}
        onDone={leave}
      />
    </div>
  );
}
