import { coach } from './people.ts';
import type { DoneRecord, ReviewRecord } from './records.ts';

function review(
  id: string,
  at: string,
  about: { clubId?: string; swing?: string; roundId?: string },
  note: string,
  task: { balls: number; due: string } | null,
): ReviewRecord {
  return {
    id,
    by: coach.name,
    at,
    about: { clubId: about.clubId ?? null, swing: about.swing ?? null, roundId: about.roundId ?? null },
    note,
    task,
    changedAt: at,
    device: coach.device,
  };
}

/** What the coach wrote on the player's book. */
export const playerReviews: readonly ReviewRecord[] = [
  review(
    'tib-v1',
    '2026-05-18T19:40:00.000Z',
    { clubId: 'tib-c13', swing: '9:00' },
    'The 54° is a new club since it was bent. Hit the 9:00 until its number holds.',
    { balls: 20, due: '2026-05-31' },
  ),
  review(
    'tib-v2',
    '2026-06-28T18:15:00.000Z',
    { clubId: 'tib-c11', swing: '9:00' },
    'No shots at all with the PW at 9:00. Find out what it carries before the county round.',
    { balls: 15, due: '2026-07-25' },
  ),
  review(
    'tib-v3',
    '2026-07-19T20:05:00.000Z',
    { clubId: 'tib-c03' },
    '5 wood and 3 hybrid look like one distance. Which of the two stays when we add a 5 iron?',
    null,
  ),
];

/** The player's word that the first task is done. */
export const playerDone: readonly DoneRecord[] = [{ reviewId: 'tib-v1', at: '2026-05-30T16:20:00.000Z' }];
