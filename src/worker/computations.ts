import type { Book } from '../book/book.ts';
import { composeBook } from '../book/composeBook.ts';
import { type FirmedUp, firmedOn } from '../book/firmedUp.ts';
import { fitBook } from '../book/fitBook.ts';
import { type SearchBook, searchBook } from '../book/numberSearch.ts';
import { type AnyFile, readAnyFile } from '../exchange/readAnyFile.ts';
import type { Reading } from '../exchange/refusal.ts';
import { memberTexts, takeInMember } from '../exchange/takeInMember.ts';
import type { Logbook } from '../golf/logbook.ts';
import { purgedMember, seasonPage, summaryOf, teamPage, teamProgress } from './teamWork.ts';

/** Everything that is reckoned off the thread that draws. Pure functions of plain data; this object's type is the contract. */
export const computations = {
  /** The book of a logbook as of an instant. */
  composeBook: (logbook: Logbook, asOf: string): Book => composeBook(logbook, asOf),
  /** The numbers that the rounds and practice of one day firmed up. */
  firmedOn: (logbook: Logbook, day: string, asOf: string): FirmedUp[] => firmedOn(logbook, day, asOf),
  /** What numbers are searched in, as of an instant. */
  searchBook: (logbook: Logbook, asOf: string): SearchBook => searchBook(fitBook(logbook, asOf)),
  /** The records of a file, or the reasons why it is refused. */
  readFile: (text: string): Reading<AnyFile> => readAnyFile(text),
  /** The team's books: a file split into golfers, one taken in, its page, tasks, seasons purged, and the summary handed over. */
  memberTexts,
  takeInMember,
  teamPage,
  teamProgress,
  purgedMember,
  seasonPage,
  summaryOf,
};

export type Computations = typeof computations;
