/** What tells the time; a parameter so that a test can set it back. */
export interface Clock {
  /** Milliseconds since 1970, UTC. */
  readonly now: () => number;
}

/** The clock of this phone. */
export const phoneClock: Clock = { now: () => Date.now() };

/** Day of the golfer's own calendar at a moment, as `YYYY-MM-DD`. */
export function localDay(ms: number): string {
  const date = new Date(ms);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${String(date.getFullYear()).padStart(4, '0')}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}
