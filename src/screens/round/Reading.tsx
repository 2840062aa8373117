import type { ComponentChildren } from 'preact';
import type { Live } from '../../logbook/liveSignal.ts';
import { PageHead } from '../parts/PageHead.tsx';
import { roundWords } from '../words/round.ts';
import { words } from '../words.ts';

interface Props<T> {
  readonly live: Live<T>;
  /** Draws what was read. */
  readonly children: (value: T) => ComponentChildren;
}

/** What was read of the logbook, or that it is awaited, or why it cannot be read. */
export function Reading<T>({ live, children }: Props<T>) {
  if (live.kind === 'ready') return <>{children(live.value)}</>;
  if (live.kind === 'loading') return <p role="status">{roundWords.opening}</p>;
  return (
    <>
      <PageHead title={roundWords.title} />
      <p role="alert">{words.storage.why(live.why)}</p>
    </>
  );
}
