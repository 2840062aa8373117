import { counted, figure } from './figure.ts';

/** Every text of typing a paper shot sheet in for a golfer, and of taking one over. */
export const paperSheetWords = {
  link: 'Type in a paper shot sheet',
  title: 'Paper shot sheet',
  sub: (name: string) => `For ${name}: a proposal, which counts only once the golfer takes it over`,
  day: 'Day of the round',
  course: 'Course',
  lines: 'The shots, one a line',
  help: (unit: string) =>
    `Hole, club, then swing, lie, strike and carry as far as they are on the paper: “3 56° 9:00 fairway 72 solid”, “1 driver tee 238”. Carries in ${unit} unless a line says otherwise (72y, 66m).`,
  read: (n: number) => `${counted(n, 'shot', 'shots')} read.`,
  wrong: (line: number, word: string) => `Line ${figure(line)}: “${word}” is not understood.`,
  noDay: 'The day is missing.',
  write: 'Write it as a proposal',
  written: 'Written. Hand it back from the golfer’s page with the reviews.',
  proposes: (n: number, day: string, course: string) =>
    `Your coach typed in a paper sheet: ${counted(n, 'shot', 'shots')} on ${day}${course ? `, ${course}` : ''}. Nothing of it counts until you take it over.`,
  accept: 'Take these shots into my logbook',
  accepted: 'These shots are in your logbook.',
  byTheRules: 'Nothing is brought in while a round by the Rules is being played. Close the round first.',
  refused: 'They could not be taken over: the sheet is not as it should be.',
} as const;
