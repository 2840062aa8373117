import { useComputed } from '@preact/signals';
import { useEffect, useErrorBoundary } from 'preact/hooks';
import type { Shelf } from '../actions/shelf.ts';
import { isFirstRun } from './isFirstRun.ts';
import { liveTrouble } from './liveTrouble.ts';
import { lookedAt } from './openLogbook.ts';
import { Broken } from './parts/Broken.tsx';
import { Page } from './parts/Page.tsx';
import { PlaceOnScreen } from './parts/PlaceOnScreen.tsx';
import { PlacesBar } from './parts/PlacesBar.tsx';
import { UpdateLine } from './parts/UpdateLine.tsx';
import { openPlace, places, startPlace } from './places.ts';
import { addressOf, route } from './route.ts';
import { TroublePage } from './storage/TroublePage.tsx';
import { useShelf } from './useShelf.ts';
import { appWords } from './words/app.ts';

/** Opens a file; what is needed for that is fetched only now. */
async function takeIn(shelf: Shelf, file: File): Promise<void> {
  const { openGivenFile } = await import('./more/opening.ts');
  await openGivenFile(shelf, file);
}

/** Takes a file dropped anywhere on the page; without this the browser would leave the app for it. */
function useDroppedFiles(): void {
  const shelf = useShelf();
  useEffect(() => {
    const allow = (event: DragEvent) => event.preventDefault();
    const take = (event: DragEvent) => {
      event.preventDefault();
      const file = event.dataTransfer?.files[0];
      if (file) void takeIn(shelf, file);
    };
    addEventListener('dragover', allow);
    addEventListener('drop', take);
    return () => {
      removeEventListener('dragover', allow);
      removeEventListener('drop', take);
    };
  }, [shelf]);
}

/** What stands on the sheet: the place of the address, or what must be said before it can be shown. */
function OnTheSheet() {
  const shelf = useShelf();
  const { value: trouble } = useComputed(() => liveTrouble(shelf));
  const { value: isFirst } = useComputed(() => isFirstRun(shelf));
  const [id, ...path] = route.value;
  const place = places.find((place) => place.id === id) ?? places[0];
  if (id === 'open') return <PlaceOnScreen place={openPlace} path={path} />;
  if (lookedAt.value && place.id === 'yardages') return <PlaceOnScreen place={place} path={path} />;
  if (trouble) return <TroublePage keepers={[shelf.own, shelf.demo]} why={trouble} />;
  if (isFirst === 'not known yet') return <p role="status">{appWords.opening}</p>;
  if (isFirst && place.id !== 'more') return <PlaceOnScreen place={startPlace} path={path} />;
  return <PlaceOnScreen place={place} path={path} />;
}

/** The app: the place that the address names, on one sheet, with the bar of places under it. */
export function App() {
  useDroppedFiles();
  const [error, forgetError] = useErrorBoundary((error) => console.error(error));
  return (
    <>
      <Page address={addressOf(...route.value)}>
        <UpdateLine />
        {error ? <Broken error={error} onAgain={forgetError} /> : <OnTheSheet />}
      </Page>
      <PlacesBar />
    </>
  );
}
