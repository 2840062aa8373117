/** How far a phone's clock may be ahead before it is taken to be wrong, ms: a day, for time zones. Own choice. */
const MOST_AHEAD_MS = 86_400_000;

/** The moment that numbers are reckoned for, and how far the phone that wrote them was ahead. */
export interface TrustedMoment {
  readonly at: string;
  /** Whole days that the phone's clock was ahead; 0: it was not. */
  readonly daysAhead: number;
}

/**
 * The moment at which a file says it was written, unless that lies in the future: then the end of today,
 * so that a phone whose clock runs ahead does not make every number look years old, and nothing is lost.
 *
 * @param said instant of the file. @param now instant here.
 */
export function trustedMoment(said: string, now: string): TrustedMoment {
  const ahead = Date.parse(said) - Date.parse(now);
  if (ahead <= MOST_AHEAD_MS) return { at: said, daysAhead: 0 };
  return { at: `${now.slice(0, 10)}T23:59:59.999Z`, daysAhead: Math.round(ahead / MOST_AHEAD_MS) };
}
