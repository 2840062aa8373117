import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { localDay } from '../../actions/clock.ts';
import { writeCarrybookFile } from '../../exchange/carrybookFile.ts';
import { sealText } from '../../exchange/sealedFile.ts';
import { shareFile, usualShare } from '../../exchange/shareFile.ts';
import { liveLogbook } from '../../logbook/live.ts';
import { compute } from '../../worker/compute.ts';
import { Choice } from '../parts/Choice.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { Field } from '../round/Field.tsx';
import { goBack } from '../route.ts';
import { useShelf } from '../useShelf.ts';
import { handOverWords } from '../words/handOver.ts';
import { teamWords } from '../words/team.ts';
import { words as allWords } from '../words.ts';
import { fileStem } from './fileStem.ts';
import { isByTheRules } from './isByTheRules.ts';
import { QrCodes } from './QrCodes.tsx';
import { SharePreview } from './SharePreview.tsx';
import { sealingTools } from './sealingTools.ts';
import { canSend, keepFile, type Sending, sendFile } from './sendFile.ts';
import css from './Team.module.css';

const words = handOverWords.share;
const SWITCHES = ['notes', 'marks', 'courses'] as const;
const WHATS = ['shots', 'summary'] as const;

/** Where a golfer hands their own book over, seeing every field before it leaves. */
export function SharePage() {
  const shelf = useShelf();
  const { connection, clock } = shelf.shown.value;
  const live = liveLogbook(connection).value;
  const logbook = live.kind === 'ready' ? live.value : null;
  const typedName = useSignal<string | null>(null);
  const what = useSignal<(typeof WHATS)[number]>('shots');
  const choices = useSignal({ notes: false, marks: false, courses: true });
  const [named, isBusy] = [useSignal(false), useSignal(false)];
  const [passphrase, news] = [useSignal(''), useSignal('')];
  const codes = useSignal<string | null>(null);
  const nickname = typedName.value ?? logbook?.player.name ?? '';
  const now = useMemo(() => clock.now(), [logbook]);
  const at = new Date(now).toISOString();
  const file = useMemo(
    () => logbook && shareFile(logbook, { ...usualShare(nickname.trim()), ...choices.value }, at),
    [logbook, nickname, choices.value, at],
  );
  const head = <PageHead title={words.title} sub={words.sub} onBack={() => goBack('team')} />;
  if (!logbook || !file || isByTheRules(shelf)) {
    const why =
      live.kind === 'failed' ? allWords.storage.why(live.why) : logbook ? teamWords.byTheRules : words.reading;
    return (
      <>
        {head}
        <p class={css.group} role="status">
          {why}
        </p>
      </>
    );
  }
  const plainText = () =>
    what.value === 'shots'
      ? Promise.resolve(writeCarrybookFile(file))
      : compute('summaryOf', logbook, at, nickname.trim());
  const sending = async (type: Sending['type']): Promise<Sending> => {
    const text = await plainText();
    const stem = fileStem('carrybook', localDay(now), named.value ? nickname.trim() : '');
    const isText = type === 'text/plain' || (what.value === 'summary' && passphrase.value === '');
    const sealed = passphrase.value === '' ? text : await sealText(text, passphrase.value, sealingTools);
    return { text: sealed, name: `${stem}.${isText ? 'txt' : 'json'}`, type: isText ? 'text/plain' : type };
  };
  const hand = async (how: 'keep' | 'json' | 'text' | 'codes') => {
    isBusy.value = true;
    news.value = passphrase.value === '' ? '' : words.sealing;
    codes.value = null;
    try {
      if (how === 'codes') {
        codes.value = await compute('summaryOf', logbook, at, nickname.trim());
        news.value = '';
        return;
      }
      const sent = await sending(how === 'text' ? 'text/plain' : 'application/json');
      if (how === 'keep') keepFile(sent);
      const isSent = how === 'keep' || (await sendFile(sent));
      news.value = isSent ? words.done(sent.name) : '';
    } catch (error) {
      news.value = words.failed(error instanceof Error ? error.message : String(error));
    } finally {
      isBusy.value = false;
    }
  };
  return (
    <>
      {head}
      <section class={css.group}>
        <Field
          label={words.nickname}
          note={words.nicknameNote}
          value={nickname}
          maxLength={60}
          onInput={(value) => {
            typedName.value = value;
          }}
        />
        <Choice
          label={words.what}
          name="what"
          values={WHATS}
          words={words.whats}
          value={what.value}
          onChoose={(value) => {
            what.value = value;
          }}
        />
        {what.value === 'shots' && (
          <fieldset class={css.bare}>
            <legend class={css.label}>{words.also}</legend>
            {SWITCHES.map((each) => (
              <label key={each} class={css.check}>
                <input
                  type="checkbox"
                  checked={choices.value[each]}
                  onChange={(event) => {
                    choices.value = { ...choices.value, [each]: event.currentTarget.checked };
                  }}
                />
                {words[each]}
              </label>
            ))}
          </fieldset>
        )}
        <label class={css.check}>
          <input
            type="checkbox"
            checked={named.value}
            onChange={(event) => {
              named.value = event.currentTarget.checked;
            }}
          />
          {words.nameInFile}
        </label>
        <Field
          label={words.passphrase}
          note={words.passphraseNote}
          value={passphrase.value}
          onInput={(value) => {
            passphrase.value = value;
          }}
        />
      </section>
      <SharePreview file={what.value === 'shots' ? file : null} />
      <section class={css.group}>
        <div class={css.keys}>
          {canSend('application/json') && (
            <button type="button" class={press.press} disabled={isBusy.value} onClick={() => void hand('json')}>
              {words.send}
            </button>
          )}
          {canSend('text/plain') && (
            <button type="button" class={press.press} disabled={isBusy.value} onClick={() => void hand('text')}>
              {words.sendText}
            </button>
          )}
          <button
            type="button"
            class={`${press.press} ${press.main}`}
            disabled={isBusy.value}
            onClick={() => void hand('keep')}
          >
            {words.keep}
          </button>
          <button type="button" class={press.press} disabled={isBusy.value} onClick={() => void hand('codes')}>
            {words.codes}
          </button>
        </div>
        <p role="status">{news.value}</p>
        <p class={css.quiet}>{words.codesSay}</p>
        {codes.value !== null && <QrCodes text={codes.value} />}
      </section>
    </>
  );
}
