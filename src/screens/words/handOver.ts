import type { TakenReview, TakeReviewRefusal } from '../../actions/takeReview.ts';
import { refusalSentence } from '../../exchange/refusal.ts';
import type { TaskProgress } from '../../golf/taskProgress.ts';
import { counted, figure } from './figure.ts';

/** What the fields of a file are, in plain words; a field not named here is shown by its place alone. */
const fields: Readonly<Record<string, string>> = {
  'player.name': 'your nickname',
  'player.id': 'a random number that stands for you',
  'player.hand': 'right- or left-handed',
  'player.swings[].swing': 'swing positions of your own',
  'player.swings[].label': 'your words for swing positions',
  'shots[].carry.m': 'how far each shot carried',
  'shots[].carry.by': 'how that was measured',
  'shots[].carry.error_m': 'how sure that is',
  'shots[].total.m': 'how far each shot went in all',
  'shots[].at': 'when each shot was played',
  'shots[].lie': 'the lie it was played from',
  'shots[].strike': 'how it was struck',
  'shots[].note': 'your notes on shots',
  'shots[].flag_m': 'distance to the flag',
  'shots[].marks.ball.lat_deg': 'where on earth you stood: latitude',
  'shots[].marks.ball.lon_deg': 'where on earth you stood: longitude',
  'shots[].marks.pitch.lat_deg': 'where on earth the ball pitched: latitude',
  'shots[].marks.pitch.lon_deg': 'where on earth the ball pitched: longitude',
  'shots[].marks.rest.lat_deg': 'where on earth the ball lay: latitude',
  'shots[].marks.rest.lon_deg': 'where on earth the ball lay: longitude',
  'rounds[].date': 'the day of each round',
  'rounds[].course': 'names of courses',
  'rounds[].tees': 'names of tees',
  'rounds[].holes[].strokes': 'your score on each hole',
  'clubs[].name': 'names of your clubs',
  'clubs[].specPeriods[].loft_deg': 'lofts of your clubs',
  'clubs[].specPeriods[].note': 'your notes on clubs',
  'reviews[].note': 'what your coach wrote',
};

function notTaken(why: TakeReviewRefusal): string {
  switch (why.kind) {
    case 'unreadable':
      return `This is no review that can be read: ${why.refusals.slice(0, 3).map(refusalSentence).join('; ')}`;
    case 'another player':
      return 'This review was written for another golfer. Nothing of it was kept.';
    case 'round by the Rules':
      return 'Nothing is brought in while a round by the Rules is being played. Close the round first.';
  }
}

function progress({ balls, hit, daysLate, isDone }: TaskProgress): string {
  const count =
    balls > 0 ? `${figure(hit)} of ${counted(balls, 'ball', 'balls')} since` : `${counted(hit, 'shot', 'shots')} since`;
  const late = !isDone && daysLate !== null && daysLate > 0 ? `; ${counted(daysLate, 'day', 'days')} late` : '';
  return `${count}${late}.`;
}

/** Every text of handing a book over, of codes, and of what a coach wrote. */
export const handOverWords = {
  share: {
    title: 'Hand my book over',
    sub: 'To a coach or a fitter, as a file or as codes. You see every field before it leaves.',
    reading: 'Reading your logbook …',
    nickname: 'Nickname that goes with it',
    nicknameNote: 'A nickname is enough. Empty: no name at all.',
    what: 'What goes',
    whats: { shots: 'Clubs and shots', summary: 'Numbers only' },
    also: 'Goes along if ticked',
    notes: 'My notes on shots and clubs',
    marks: 'Places marked by satellite',
    courses: 'Names of courses and tees',
    nameInFile: 'My nickname in the name of the file',
    passphrase: 'Passphrase, if you want the file sealed',
    passphraseNote: 'Tell it by another way than the file. It cannot be recovered.',
    preview: (n: number) => `Every field that leaves this device: ${counted(n, 'kind', 'kinds')}`,
    field: 'Field',
    times: 'How many',
    example: 'For example',
    fields,
    summaryFields:
      'Of each number: club, loft, swing, carry, ±, own shots, day of the last one. Beside them your nickname, and a random number that stands for you. No shot, no round, no place.',
    send: 'Hand the file over …',
    sendText: 'Hand it over as .txt …',
    keep: 'Save the file',
    sealing: 'Sealing …',
    done: (name: string) => `${name} was handed to the browser.`,
    failed: (why: string) => `It was not handed over: ${why}`,
    codes: 'Show it as codes',
    codesSay: 'Numbers only, read off this screen by the coach’s camera. No network is needed.',
    tooMany: 'That is too much for codes. Hand the file over instead.',
  },
  codes: {
    label: (n: number, of: number) => `Code ${figure(n)} of ${figure(of)}`,
    next: 'Next code',
    previous: 'Code before',
    making: 'Drawing the codes …',
    failed: (why: string) => `The codes could not be drawn: ${why}`,
    read: 'Read codes',
    readSays: 'With this device’s camera, or from a picture of the code.',
    camera: 'Use the camera',
    stop: 'Stop the camera',
    picture: 'Choose a picture',
    noCamera: (why: string) => `The camera cannot be used: ${why}`,
    noCode: 'There is no code in this picture that can be read.',
    got: (read: number, of: number) => `Code ${figure(read)} of ${figure(of)} read.`,
    notOurs: 'That code is none of this app’s, or of another set. Begin again with the first.',
    view: 'What the camera sees',
  },
  reviews: {
    title: 'My coach’s words',
    sub: 'Notes and practice that a coach handed back',
    none: 'Nothing yet. A coach hands a review back as a file or as codes; open it here.',
    pick: 'Open a review file',
    taken: ({ new: added, same, beside }: TakenReview) =>
      `${[
        counted(added, 'new review', 'new reviews'),
        ...(same > 0 ? [`${figure(same)} here already`] : []),
        ...(beside > 0 ? [`${figure(beside)} kept beside another wording`] : []),
      ].join(', ')}.`,
    notTaken,
    about: 'From your coach',
    by: (by: string, day: string) => `${by || 'Coach'}, ${day}`,
    aboutRound: (day: string) => `the round of ${day}`,
    aboutAll: 'your game',
    task: (balls: number, due: string | null) =>
      `${balls > 0 ? counted(balls, 'ball', 'balls') : 'Practise'}${due ? ` by ${due}` : ''}`,
    progress,
    done: 'Mark it done',
    notDone: 'Not done after all',
    isDone: (day: string) => `Done, ${day}.`,
    notSaved: (why: string) => `Not saved: ${why}`,
  },
  write: {
    title: 'Write a review',
    for: (n: number) => `For ${counted(n, 'golfer', 'golfers')}`,
    club: 'About',
    all: 'the whole game',
    swing: 'Swing',
    anySwing: 'any swing',
    round: 'Round',
    noRound: 'no one round',
    note: 'Note',
    noteHelp: 'Short and kind. It stands beside that number on the golfer’s phone.',
    balls: 'Balls to practise',
    ballsWrong: 'A whole number from 1 to 10,000, or nothing.',
    due: 'By',
    write: 'Write it',
    written: (n: number) =>
      `Written for ${counted(n, 'golfer', 'golfers')}. Hand it back below, or from each golfer’s page.`,
    empty: 'A review needs a note or a number of balls.',
    wrong: (path: string) => `This cannot be kept: ${path}`,
    here: 'What you wrote',
    none: 'Nothing yet.',
    handed: (day: string) => `handed back ${day}`,
    notHanded: 'not handed back yet',
    withdraw: 'Take it back',
    handBack: 'Hand the reviews back',
    nameInFile: 'The golfer’s nickname in the name of the file',
    unknownProgress: 'Only numbers were handed over, so shots cannot be counted.',
  },
} as const;
