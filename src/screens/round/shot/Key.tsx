import type { ComponentChildren } from 'preact';
import css from './Key.module.css';
import { tapGuard } from './tapGuard.ts';

const counts = tapGuard();

/** Whether a click counts: one of the keyboard always does, a tap unless it is the last one bouncing. */
export function isMeant(event: MouseEvent): boolean {
  return event.detail === 0 || counts({ at_ms: event.timeStamp, x: event.clientX, y: event.clientY });
}

export interface KeyProps {
  /** What those hear who do not see the key, when its face says too little. It contains what the face says. */
  readonly name?: string;
  /** For a key that stands for something chosen or not. */
  readonly isPressed?: boolean;
  readonly look?: 'plain' | 'figure' | 'main' | 'quiet';
  readonly isOff?: boolean;
  readonly onPress: () => void;
  readonly children: ComponentChildren;
}

/** One key of the logging page: large enough for a glove, and one tap is one action. */
export function Key({ name, isPressed, look = 'plain', isOff = false, onPress, children }: KeyProps) {
  return (
    <button
      type="button"
      class={`${css.key} ${css[look]}`}
      aria-label={name}
      aria-pressed={isPressed}
      aria-disabled={isOff ? 'true' : undefined}
      data-key=""
      onClick={(event) => {
        if (isMeant(event) && !isOff) onPress();
      }}
    >
      {children}
    </button>
  );
}
