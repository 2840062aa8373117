import { readFileSync } from 'node:fs';
import { type CarrybookFile, readCarrybookFile } from '../../src/exchange/carrybookFile.ts';
import type { Shot } from '../../src/golf/shot.ts';

export function demoText(name: string): string {
  return readFileSync(new URL(`../../demo/${name}`, import.meta.url), 'utf8');
}

/** A demo season as the app reads it; a refusal is an error with its reasons. */
export function demoSeason(name: string): CarrybookFile {
  const reading = readCarrybookFile(demoText(name));
  if (reading.kind === 'refused') throw new RangeError(`${name}: ${JSON.stringify(reading.refusals)}`);
  return reading.value;
}

export function onCourse(file: CarrybookFile): Shot[] {
  const practice = new Set(file.rounds.filter((round) => round.play === 'practice ground').map((round) => round.id));
  return file.shots.filter((shot) => !practice.has(shot.roundId));
}

/** The shots of each hole that was played, in the order they were hit: round and hole, then its shots. */
export function shotsByHole(file: CarrybookFile): Map<string, Shot[]> {
  const holes = new Map<string, Shot[]>();
  for (const shot of onCourse(file)) {
    const key = `${shot.roundId} ${shot.hole}`;
    holes.set(key, [...(holes.get(key) ?? []), shot]);
  }
  for (const shots of holes.values()) shots.sort((a, b) => a.number - b.number);
  return holes;
}
