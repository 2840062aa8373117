import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { qrPages } from '../../exchange/qrPages.ts';
import press from '../parts/Press.module.css';
import { handOverWords } from '../words/handOver.ts';
import css from './QrCodes.module.css';
import team from './Team.module.css';

const words = handOverWords.codes;

/** One code as modules: how many a side, and the path of the dark ones. */
interface Drawn {
  readonly size: number;
  readonly path: string;
}

/** Light modules round a code. Source: ISO/IEC 18004, four modules of quiet zone. */
const QUIET = 4;

async function draw(text: string): Promise<Drawn> {
  // Fetched only when codes are shown, to keep the first load small.
  const { create } = await import('qrcode');
  const { modules } = create(text, { errorCorrectionLevel: 'L' });
  const { size, data } = modules;
  let path = '';
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) if (data[y * size + x]) path += `M${x + QUIET} ${y + QUIET}h1v1h-1z`;
  }
  return { size: size + 2 * QUIET, path };
}

/** A text as codes, one at a time and large; black on white whatever the light. */
export function QrCodes({ text }: { readonly text: string }) {
  const page = useSignal(0);
  const drawn = useSignal<readonly Drawn[] | null>(null);
  const trouble = useSignal<string | null>(null);
  const pages = qrPages(text);
  useEffect(() => {
    page.value = 0;
    drawn.value = null;
    Promise.all((pages ?? []).map(draw)).then(
      (codes) => {
        drawn.value = codes;
      },
      (error: Error) => {
        trouble.value = error.message;
      },
    );
  }, [text]);
  if (!pages) return <p role="alert">{handOverWords.share.tooMany}</p>;
  if (trouble.value !== null) return <p role="alert">{words.failed(trouble.value)}</p>;
  const code = drawn.value?.[page.value];
  if (!code) return <p role="status">{words.making}</p>;
  const label = words.label(page.value + 1, pages.length);
  const turn = (by: number) => {
    page.value = (page.value + by + pages.length) % pages.length;
  };
  return (
    <figure class={css.code}>
      <svg viewBox={`0 0 ${code.size} ${code.size}`} role="img" aria-label={label} shape-rendering="crispEdges">
        <rect width={code.size} height={code.size} fill="#fff" />
        <path d={code.path} fill="#000" />
      </svg>
      <figcaption>{label}</figcaption>
      {pages.length > 1 && (
        <div class={team.keys}>
          <button type="button" class={press.press} onClick={() => turn(-1)}>
            {words.previous}
          </button>
          <button type="button" class={press.press} onClick={() => turn(1)}>
            {words.next}
          </button>
        </div>
      )}
    </figure>
  );
}
