import type { Persistence } from '../../actions/persistStorage.ts';
import type { Restored } from '../../actions/restoreBackup.ts';
import type { MergeCounts } from '../../exchange/mergeReport.ts';
import { counted, figure } from './figure.ts';
import { updateWords } from './update.ts';

const megabyte = 1_000_000;

const persistence: Record<Persistence, string> = {
  granted: 'The browser has promised to keep the logbook, even when space runs short.',
  refused:
    'The browser has not promised to keep the logbook when space runs short. Installing the app usually changes its mind.',
  'not offered': 'This browser makes no promises about storage. Keep backups.',
};

const merged = (what: string, { new: added, changed, removed }: MergeCounts): string =>
  `${what}: ${figure(added)} new, ${figure(changed)} changed, ${figure(removed)} removed.`;

/** Every text of the More place. */
export const moreWords = {
  title: 'More',
  notSaved: 'Not saved.',
  settings: {
    title: 'How you read it',
    temperature: 'Temperature',
    temperatures: { '°F': '°F', '°C': '°C' },
    wind: 'Wind',
    winds: { mph: 'mph', 'm/s': 'm/s', 'km/h': 'km/h' },
    hand: 'You play',
    hands: { right: 'Right-handed', left: 'Left-handed' },
    handNote: 'Left-handed turns the keys of the logging page over, so that they lie under the left thumb.',
    name: 'Nickname',
    nameNote: 'Stands on your card and in your files. A nickname is enough.',
  },
  paper: {
    title: 'On paper',
    what: 'For the pocket, and for events without phones.',
    card: 'Printed card',
    sheet: 'Blank shot sheet',
  },
  backup: {
    title: 'Backup',
    what: 'One Carrybook file with everything in your logbook. Keep it somewhere else than on this device.',
    last: (day: string) => `Last backup: ${day}.`,
    never: 'No backup was made yet.',
    due: (rounds: number) =>
      rounds > 0 ? `${counted(rounds, 'round', 'rounds')} since: time for another one.` : 'Time for another one.',
    save: 'Save a backup file',
    share: 'Hand the file over …',
    done: (name: string) => `${name} was handed to the browser.`,
    unsaved: (n: number) =>
      `${counted(n, 'change is', 'changes are')} not saved yet, and not in this file. Make another backup once they are.`,
    restore: 'Restore a backup',
    notShared: (why: string) => `It was not handed over: ${why}`,
    byTheRules:
      'A round by the Rules is being played: nothing is handed over or brought in until it is over (Rule 4.3a). A backup may still be saved on this device.',
  },
  restore: {
    title: 'Restore a backup',
    what: 'Choose a Carrybook file that was saved as a backup, on this device or another.',
    pick: 'Choose the file',
    reading: (name: string) => `Reading ${name} …`,
    holds: (of: { name: string; clubs: number; rounds: number; shots: number; day: string }) =>
      `${of.name || 'A golfer without a name'}, saved ${of.day}: ${counted(of.clubs, 'club', 'clubs')}, ${counted(of.rounds, 'round', 'rounds')}, ${counted(of.shots, 'shot', 'shots')}.`,
    here: (of: { rounds: number; shots: number }) =>
      `In the logbook here: ${counted(of.rounds, 'round', 'rounds')}, ${counted(of.shots, 'shot', 'shots')}.`,
    empty: 'The logbook here is empty.',
    bring: 'Bring it back',
    merge: 'Merge the two',
    mergeWhat: 'Both stay; where both have a record, the one changed later counts.',
    replace: 'Replace what is here',
    replaceWhat: 'What is here now goes, and cannot be brought back. Save a backup of it first.',
    saveFirst: 'Save a backup of what is here',
    working: 'Restoring …',
    notOne: 'This is no backup of one golfer’s logbook. A team file or a review is opened elsewhere.',
    done: ({ clubs, rounds, shots }: Restored) =>
      `Restored: ${counted(clubs, 'club', 'clubs')}, ${counted(rounds, 'round', 'rounds')}, ${counted(shots, 'shot', 'shots')}.`,
    merged: (of: { rounds: MergeCounts; shots: MergeCounts; clubs: MergeCounts }) =>
      [merged('Clubs', of.clubs), merged('Rounds', of.rounds), merged('Shots', of.shots)].join(' '),
    toYardages: 'To the yardages',
  },
  storage: {
    title: 'Kept on this device',
    used: (bytes: number) => `${figure(Math.round((bytes / megabyte) * 10) / 10)} MB used on this device.`,
    persistence,
    ask: 'Ask the browser to keep it',
    bin: 'The bin: deleted shots and rounds, 30 days',
  },
  install: {
    title: 'On the home screen',
    installed: 'The app is installed on this device.',
    why: 'Installed, it opens like any app, without a signal, and the browser is far less likely to clear the logbook. Do it before your first round.',
    install: 'Install',
    ios: 'Tap Share, then Add to Home Screen.',
    other: 'In the browser’s menu, choose Install or Add to Home screen.',
  },
  demo: {
    title: 'Demo season',
    what: 'Invented shots of invented golfers to look around in. Your own logbook is not touched by it.',
    shown: 'The demo season is on the screen. Your own logbook waits untouched.',
    remove: 'Remove the demo season',
    look: 'Look at a file',
  },
  update: updateWords,
  privacy: {
    title: 'Privacy and shared devices',
    says: [
      'Nothing leaves this device. There is no account, no server of ours, no counting of what you do, and no request to anybody else.',
      'Your logbook is in this browser on this device. Whoever can open this browser can read it.',
      'On a device that is shared, or managed by a school, do not keep a logbook: look at a file instead, or delete everything before you hand the device on.',
      'A browser may clear a site that was not visited for days. Install the app, and keep backups.',
    ],
  },
  erase: {
    link: 'Delete everything …',
    title: 'Delete everything',
    what: 'Deletes your logbook, the demo season, the bin and your settings from this device. It cannot be undone: no bin, no undo. A backup file kept elsewhere stays.',
    inRound: 'A round is being played; its shots go too.',
    word: 'delete',
    type: (word: string) => `To do it, type “${word}”`,
    go: 'Delete everything',
    working: 'Deleting …',
    done: 'Everything was deleted.',
  },
} as const;
