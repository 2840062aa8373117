import { words } from '../words.ts';

/** The two invented golfers of the demo season. */
export type DemoGolfer = 'player' | 'coach';

/** The text of a demo logbook, or why there is none. */
export type DemoSeason =
  | { readonly kind: 'fetched'; readonly text: string }
  | { readonly kind: 'failed'; readonly why: string };

/** Fetches a demo season from beside the app: the only thing the app ever loads. */
export async function demoSeason(golfer: DemoGolfer): Promise<DemoSeason> {
  try {
    const response = await fetch(`./demo/season-${golfer}.json`);
    if (!response.ok) return { kind: 'failed', why: words.open.demoMissing(response.status) };
    return { kind: 'fetched', text: await response.text() };
  } catch (error) {
    console.error('the demo season cannot be fetched', error);
    return { kind: 'failed', why: words.open.notFetched };
  }
}
