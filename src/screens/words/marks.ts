import type { MarkedPlace } from '../../golf/markChain.ts';

/** Every text about marks by satellite. */
export const marksWords = {
  title: 'Marks',
  place: { ball: 'Ball here', pitch: 'Pitch here', rest: 'Rest here' } satisfies Record<MarkedPlace, string>,
  is: {
    ball: 'Ball marked',
    pitch: 'Pitch marked',
    rest: 'Rest marked',
  } satisfies Record<MarkedPlace, string>,
  again: 'tap to mark anew',
  /** The radius that holds the place 95 times in 100. */
  good: (radius: string, fixes: number) =>
    fixes > 1 ? `Place known within ${radius}, from ${fixes} fixes.` : `Place known within ${radius}.`,
  poor: (radius: string) =>
    `A poor fix: within ${radius} only. Step clear of trees and wait a little, or pace the distance and type it.`,
  looking: 'Looking for satellites. Under open sky it takes a few seconds.',
  noFix: 'No fix. Hold the phone up, clear of trees. The shot can be logged without a mark.',
  refused:
    'This phone was told not to say where it is. Allow location for this page in the phone’s settings, or pace the distance and type it.',
  notOffered: 'This browser has no location to give. Pace the distance and type it.',
  off: 'The first tap on a mark starts the search.',
  total: (distance: string, plusMinus: string) => `Total ${distance} ± ${plusMinus}`,
  later: 'Distances are worked out when the round is over.',
  ring: (radius: string) => `The place lies in the ring, ${radius} about, 95 times in 100.`,
} as const;
