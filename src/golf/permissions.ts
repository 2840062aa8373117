import type { Round } from './round.ts';

/** What the app may do and show at the moment. */
export interface Permissions {
  /** The book follows each logged shot; otherwise it stays as it stood when the round began. */
  readonly bookFollowsShots: boolean;
  /** A number may be searched, neighbours compared, the card adjusted to the day, a bag or a shot planned. */
  readonly reckoning: boolean;
  /** Carries and totals of the open round's own shots may be worked out and shown; otherwise only what was entered. */
  readonly measuring: boolean;
  /** The satellite receiver may be asked where the phone is. */
  readonly locating: boolean;
  /** Files may be read into the logbook. */
  readonly importing: boolean;
  /** Numbers may be handed to somebody else. */
  readonly sharing: boolean;
  /** Rounds played earlier, claims and builds of clubs may be changed: all that the frozen book rests on. */
  readonly changingEvidence: boolean;
  /** A new version of the app may be put in place of this one. */
  readonly updating: boolean;
}

/**
 * What is allowed while a round is open, or while none is (null).
 *
 * A round by the Rules is read conservatively: until "round over" there are the numbers of earlier rounds as a
 * plain card and a log that is only written to. Nothing in it depends on the hole, the weather or the play. Where
 * distance devices are not allowed the receiver stays off, in a casual round too.
 *
 * Source: R&A and USGA, Rules of Golf (2023), Rule 4.3a (information gathered before the round may be used, play
 * may be recorded for use afterwards, the play of this round may not be processed) and Model Local Rule G-5 (no
 * distance-measuring devices), from memory. That the app stays on one version is our own choice.
 */
export function permissions(open: Pick<Round, 'play' | 'distanceDevices' | 'closed'> | null): Permissions {
  const isOpen = open !== null && !open.closed;
  const isStrict = isOpen && open.play === 'rules';
  return {
    bookFollowsShots: !isStrict,
    reckoning: !isStrict,
    measuring: !isStrict,
    locating: isOpen && open.distanceDevices,
    importing: !isStrict,
    sharing: !isStrict,
    changingEvidence: !isStrict,
    updating: !isOpen,
  };
}
