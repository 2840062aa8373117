import { type ChainedChange, type MarkedPlace, marked, markedPlaces, restOfLast } from '../../../golf/markChain.ts';
import { permissions } from '../../../golf/permissions.ts';
import type { Round } from '../../../golf/round.ts';
import type { Shot } from '../../../golf/shot.ts';
import type { ShotChanges, ShotEntry } from '../../../golf/shotEntry.ts';
import { type DistanceUnit, distanceWithUnit, plusMinusOfError } from '../../distance.ts';
import { marksWords as words } from '../../words/marks.ts';
import type { Location } from './location.ts';
import { askForLocation, useLocation } from './useLocation.ts';

/** What a shot is marked with. */
export interface MarkGiven {
  readonly round: Round;
  /** The shots of the round as they are logged, without the one that is entered. */
  readonly shots: readonly Shot[];
  /** The shot being entered. */
  readonly entry: ShotEntry;
  readonly unit: DistanceUnit;
  /**
   * A place was marked: the slots of this shot that change, and what it says of the shot before, which is logged
   * already and is to be edited.
   */
  readonly onMark: (place: MarkedPlace, changes: ShotChanges, before: ChainedChange | null) => void;
}

/** How a shot is marked here and now. */
export interface Marking {
  /** Where the phone is; `off` where it may not be asked. */
  readonly location: Location;
  readonly isAllowed: boolean;
  /** What the marks measured, or that it follows after the round; empty when nothing was marked. */
  readonly results: readonly string[];
  /** The place that is marked next in the order a shot is lived. */
  readonly next: MarkedPlace;
  readonly isMarked: (place: MarkedPlace) => boolean;
  /** Marks a place; while the receiver is off it starts the search instead. */
  readonly take: (place: MarkedPlace) => void;
}

/** How long the phone shakes when a place is marked, milliseconds. */
const SHAKE_MS = 30;

/** What the marks of a shot measured in all; its carry stands with the shot like any other. */
function measured({ total }: Pick<ShotEntry, 'total'>, unit: DistanceUnit): string[] {
  if (total?.by !== 'gnss' || total.error_m === null) return [];
  return [words.total(distanceWithUnit(total.m, unit), plusMinusOfError(total.error_m, unit))];
}

/**
 * Marks the places of a shot with the phone held over them. Distances appear only where they may be worked out during
 * play; in a round by the Rules they follow after it.
 */
export function useMarking({ round, shots, entry, unit, onMark }: MarkGiven): Marking {
  const location = useLocation(round);
  const may = permissions(round);
  const mark = location.kind === 'fix' ? location.mark : null;
  const isMarked = (place: MarkedPlace) => entry.marks[place] !== null;
  return {
    location,
    isAllowed: may.locating,
    results: may.measuring ? measured(entry, unit) : markedPlaces.some(isMarked) ? [words.later] : [],
    next: markedPlaces.find((place) => !isMarked(place)) ?? 'rest',
    isMarked,
    take: (place) => {
      if (location.kind === 'off') askForLocation();
      if (!mark) return;
      navigator.vibrate?.(SHAKE_MS);
      const before = place === 'ball' ? restOfLast(shots, entry, mark, may.measuring) : null;
      onMark(place, marked(entry, place, mark, may.measuring), before);
    },
  };
}
