import { signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { openPlace, type Place, type PlaceScreen, places, startPlace } from '../places.ts';
import { quiet } from '../quiet.ts';
import { type Route, route } from '../route.ts';
import { appWords } from '../words/app.ts';
import press from './Press.module.css';

type Fetched =
  | { readonly kind: 'fetched'; readonly Screen: PlaceScreen }
  | { readonly kind: 'failed'; readonly why: string };

/** The places that were fetched, by their ids. */
const fetched = signal<Readonly<Record<string, Fetched>>>({});

async function fetchPlace({ id, load }: Place): Promise<void> {
  let got: Fetched;
  try {
    got = { kind: 'fetched', Screen: await load() };
  } catch (error) {
    got = { kind: 'failed', why: error instanceof Error ? error.message : String(error) };
  }
  fetched.value = { ...fetched.peek(), [id]: got };
}

/**
 * Fetches the place of the address, and at the first quiet moment every other, so that each is there at one tap,
 * and stays there when another tab takes a new version.
 */
export async function fetchPlaces(): Promise<void> {
  const first = places.find(({ id }) => id === route.peek()[0]) ?? places[0];
  if (!fetched.peek()[first.id]) await fetchPlace(first);
  await quiet();
  for (const place of [...places, startPlace, openPlace]) if (!fetched.peek()[place.id]) await fetchPlace(place);
}

/** A place, fetched when it is first gone to. */
export function PlaceOnScreen({ place, path }: { readonly place: Place; readonly path: Route }) {
  const there = fetched.value[place.id];
  useEffect(() => {
    if (!there) void fetchPlace(place);
  }, [place, there]);
  if (!there) return <p role="status">{appWords.fetching}</p>;
  if (there.kind === 'fetched') return <there.Screen path={path} />;
  return (
    <>
      <p role="alert">{appWords.notFetched(there.why)}</p>
      <button type="button" class={press.press} onClick={() => location.reload()}>
        {appWords.loadAgain}
      </button>
    </>
  );
}
