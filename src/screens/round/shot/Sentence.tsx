import { useEffect, useRef } from 'preact/hooks';
import { shotWords } from '../../words/shot.ts';
import { isMeant } from './Key.tsx';
import css from './Sentence.module.css';
import { type SentencePart, sentenceText } from './sentenceParts.ts';
import type { Slot } from './slots.ts';

/** Stays on the line of the word before it. */
const PUNCTUATION = /^[,.]/;

interface Props {
  readonly parts: readonly SentencePart[];
  readonly onOpen: (slot: Slot) => void;
}

/** The shot as a sentence; each slot of it is tapped to open its keys. It is read out as one sentence. */
export function Sentence({ parts, onOpen }: Props) {
  const active = useRef<HTMLButtonElement>(null);
  const slot = parts.find((part) => part.kind === 'slot' && part.isActive);
  const opened = slot?.kind === 'slot' ? slot.slot : null;
  useEffect(() => {
    if (opened) active.current?.scrollIntoView({ block: 'nearest' });
  }, [opened]);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a sentence with buttons in it is no fieldset
    <div class={css.sentence} role="group" aria-label={sentenceText(parts)}>
      {parts.map((part, index) => {
        if (part.kind === 'words') {
          const follows = parts[index - 1]?.kind === 'slot';
          return <span key={`${index} words`}>{follows ? part.text.replace(PUNCTUATION, '') : part.text}</span>;
        }
        const after = parts[index + 1];
        const mark = after?.kind === 'words' ? (PUNCTUATION.exec(after.text)?.[0] ?? '') : '';
        return (
          <span key={part.slot} class={`${css.kept} ${mark ? css.marked : ''}`}>
            <button
              ref={part.isActive ? active : null}
              type="button"
              class={`${css.slot} ${part.isOpen ? css.open : ''}`}
              aria-current={part.isActive ? 'step' : undefined}
              aria-label={shotWords.slotLabel(
                shotWords.slot[part.slot],
                part.text === shotWords.open ? shotWords.stillOpen : part.text,
              )}
              data-slot={part.slot}
              onClick={(event) => {
                if (isMeant(event)) onOpen(part.slot);
              }}
            >
              {part.text}
            </button>
            {mark}
          </span>
        );
      })}
    </div>
  );
}
