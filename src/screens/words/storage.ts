import type { StorageTrouble } from '../../logbook/storageTrouble.ts';

const what: Record<StorageTrouble['kind'], string> = {
  quota: 'This device has no room left for the logbook.',
  'blocked upgrade': 'Another tab of this app holds the logbook in its old form.',
  'newer version': 'The logbook on this device was written by a newer version of the app than this one.',
  'connection lost': 'The browser lost its hold on the logbook, and could not take hold of it again.',
  'no storage': 'This browser gives the page no place to keep a logbook.',
  failed: 'The logbook could not be reached.',
};

const todo: Record<StorageTrouble['kind'], string> = {
  quota: 'Delete pictures or files that you do not need, then try again. Nothing stored is lost.',
  'blocked upgrade': 'Close the other tabs and windows of this app; this one then goes on by itself.',
  'newer version': 'Load the page again while connected, so that the newer version comes.',
  'connection lost':
    'Try again. If that does not help, close the app and open it once more. What was saved is still there.',
  'no storage':
    'A private window often keeps nothing: open the app in an ordinary one. A file can be looked at all the same.',
  failed: 'Try again. If that does not help, close the app and open it once more.',
};

/** What is said when the browser does not keep the logbook as it should, and what to do then. */
export const storageWords = {
  title: 'The logbook is out of reach',
  what,
  todo,
  reason: (reason: string) => `The browser says: ${reason}`,
  /** In one line, for beside a key. */
  why: (trouble: StorageTrouble) => `${what[trouble.kind]} ${todo[trouble.kind]}`,
  again: 'Try again',
  look: 'Look at a file',
} as const;
