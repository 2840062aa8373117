/** Every text about newer versions of the app. */
export const updateWords = {
  title: 'Version',
  version: (version: string) => `Version ${version}`,
  check: 'Look for a new version',
  checking: 'Looking …',
  none: 'This is the newest version.',
  'not offered': 'Nothing is kept here for use without a signal: the page was not opened from a secure address.',
  failed: 'No new version could be looked for: the connection may be down. The app works all the same.',
  waiting: 'A new version is ready.',
  waitingInRound:
    'A new version is ready. It waits until the round is over, unless you take it now; nothing entered is lost.',
  waitingByTheRules: 'A new version is ready. It waits until the round by the Rules is over.',
  elsewhere: 'Another tab has taken a new version. Load this one again when it suits you.',
  apply: 'Take the new version',
  reload: 'Load again',
  later: 'Later',
} as const;
