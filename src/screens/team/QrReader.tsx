import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { joinPages } from '../../exchange/qrPages.ts';
import press from '../parts/Press.module.css';
import { handOverWords } from '../words/handOver.ts';
import { codeReader } from './codeIn.ts';
import qr from './QrCodes.module.css';
import css from './Team.module.css';

const words = handOverWords.codes;

/** Time between two looks at what the camera sees, ms. */
const EVERY_MS = 250;

/** Reads the codes of one text by camera or off pictures, and hands the text on when all were read. */
export function QrReader({ onText }: { readonly onText: (text: string) => void }) {
  const pages = useSignal<readonly string[]>([]);
  const news = useSignal('');
  const stream = useSignal<MediaStream | null>(null);
  const video = useRef<HTMLVideoElement>(null);
  const picker = useRef<HTMLInputElement>(null);

  const stop = () => {
    for (const track of stream.peek()?.getTracks() ?? []) track.stop();
    stream.value = null;
  };
  const found = (page: string) => {
    if (pages.peek().includes(page)) return;
    const joined = joinPages([...pages.peek(), page]);
    if (joined.kind === 'not ours') {
      pages.value = [];
      news.value = words.notOurs;
    } else if (joined.kind === 'part') {
      pages.value = [...pages.peek(), page];
      news.value = words.got(joined.read.length, joined.of);
    } else {
      pages.value = [];
      news.value = '';
      stop();
      onText(joined.text);
    }
  };
  const start = async () => {
    try {
      stream.value = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } });
    } catch (error) {
      news.value = words.noCamera(error instanceof Error ? error.message : String(error));
    }
  };
  useEffect(() => {
    const view = video.current;
    const seen = stream.value;
    if (!view || !seen) return undefined;
    view.srcObject = seen;
    let isOver = false;
    const look = async () => {
      const read = await codeReader();
      await view.play();
      while (!isOver) {
        const page = view.videoWidth > 0 ? await read(view, view.videoWidth, view.videoHeight) : null;
        if (page && !isOver) found(page);
        await new Promise((resolve) => setTimeout(resolve, EVERY_MS));
      }
    };
    look().catch((error) => {
      if (!isOver) news.value = words.noCamera(error instanceof Error ? error.message : String(error));
    });
    return () => {
      isOver = true;
    };
  }, [stream.value]);
  // Leaving the page puts the camera out.
  useEffect(() => stop, []);

  const take = async () => {
    const field = picker.current;
    if (!field) return;
    const files = [...(field.files ?? [])];
    field.value = '';
    try {
      const read = await codeReader();
      for (const file of files) {
        const picture = await createImageBitmap(file);
        const page = await read(picture, picture.width, picture.height);
        picture.close();
        if (page) found(page);
        else news.value = words.noCode;
      }
    } catch (error) {
      news.value = `${words.noCode} ${error instanceof Error ? error.message : String(error)}`;
    }
  };
  return (
    <section class={css.group} aria-label={words.read}>
      <h2>{words.read}</h2>
      <p class={css.quiet}>{words.readSays}</p>
      <div class={css.keys}>
        <button type="button" class={press.press} onClick={() => (stream.value ? stop() : void start())}>
          {stream.value ? words.stop : words.camera}
        </button>
        <input
          ref={picker}
          class={css.picker}
          id="code-picture"
          type="file"
          multiple
          accept="image/*"
          onChange={() => void take()}
        />
        <label class={press.press} for="code-picture">
          {words.picture}
        </label>
      </div>
      <p role="status">{news.value}</p>
      {stream.value && <video ref={video} class={qr.view} muted playsInline aria-label={words.view} />}
    </section>
  );
}
