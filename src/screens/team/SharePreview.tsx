import { useMemo } from 'preact/hooks';
import type { CarrybookFile } from '../../exchange/carrybookFile.ts';
import { sharePreview } from '../../exchange/sharePreview.ts';
import { figure } from '../words/figure.ts';
import { handOverWords } from '../words/handOver.ts';
import css from './Team.module.css';

const words = handOverWords.share;

/** Every field of the very file that is about to leave. Null: only numbers leave, and they are named in a sentence. */
export function SharePreview({ file }: { readonly file: CarrybookFile | null }) {
  const fields = useMemo(() => (file ? sharePreview(file) : []), [file]);
  if (!file) return <p class={css.group}>{words.summaryFields}</p>;
  return (
    <details class={`${css.group} ${css.details}`}>
      <summary>{words.preview(fields.length)}</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part of the page that scrolls must be reached by keys */}
      <section class={css.scroll} tabIndex={0} aria-label={words.preview(fields.length)}>
        <table class={css.plain}>
          <thead>
            <tr>
              <th scope="col">{words.field}</th>
              <th scope="col" data-figure>
                {words.times}
              </th>
              <th scope="col">{words.example}</th>
            </tr>
          </thead>
          <tbody>
            {fields.map(({ path, count, example }) => (
              <tr key={path}>
                <th scope="row">
                  {path}
                  {words.fields[path] && <div class={css.quiet}>{words.fields[path]}</div>}
                </th>
                <td data-figure>{figure(count)}</td>
                <td>{example}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}
