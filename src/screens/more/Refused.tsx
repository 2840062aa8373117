import type { Refusal } from '../../exchange/refusal.ts';
import { words } from '../words.ts';
import css from './OpenFile.module.css';

/** Why a file was not opened: each place, what would have been right there, and what stands there. */
export function Refused({ name, refusals }: { readonly name: string; readonly refusals: readonly Refusal[] }) {
  return (
    <div class={css.refused} role="alert">
      <h2>{words.refusal.title(name)}</h2>
      {refusals.map(({ path, expected, found }) => (
        <dl key={`${path} ${expected} ${found}`}>
          <div>
            <dt>{words.refusal.place}</dt>
            <dd>{path}</dd>
          </div>
          <div>
            <dt>{words.refusal.expected}</dt>
            <dd>{expected}</dd>
          </div>
          <div>
            <dt>{words.refusal.found}</dt>
            <dd>{found}</dd>
          </div>
        </dl>
      ))}
      <p>{words.refusal.safe}</p>
    </div>
  );
}
