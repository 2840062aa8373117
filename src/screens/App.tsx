import { useEffect, useErrorBoundary } from 'preact/hooks';
import { OpenFile } from './more/OpenFile.tsx';
import { openGivenFile } from './more/opening.ts';
import { openLogbook } from './openLogbook.ts';
import { Broken } from './parts/Broken.tsx';
import { Page } from './parts/Page.tsx';
import { PlacesBar } from './parts/PlacesBar.tsx';
import { places } from './places.ts';
import { addressOf, route } from './route.ts';

/** Takes a file dropped anywhere on the page; without this the browser would leave the app for it. */
function useDroppedFiles(): void {
  useEffect(() => {
    const allow = (event: DragEvent) => event.preventDefault();
    const take = (event: DragEvent) => {
      event.preventDefault();
      const file = event.dataTransfer?.files[0];
      if (file) void openGivenFile(file);
    };
    addEventListener('dragover', allow);
    addEventListener('drop', take);
    return () => {
      removeEventListener('dragover', allow);
      removeEventListener('drop', take);
    };
  }, []);
}

/** The app: the place that the address names, on one sheet, with the bar of places under it. */
export function App() {
  useDroppedFiles();
  const [error, forgetError] = useErrorBoundary((error) => console.error(error));
  const [id, ...path] = route.value;
  const place = places.find((place) => place.id === id) ?? places[0];
  const isOpening = openLogbook.value === null || id === 'open';
  const address = isOpening ? addressOf('open') : addressOf(...route.value);
  return (
    <>
      <Page address={address}>
        {error ? (
          <Broken error={error} onAgain={forgetError} />
        ) : isOpening ? (
          <OpenFile />
        ) : (
          <place.Screen path={path} />
        )}
      </Page>
      <PlacesBar />
    </>
  );
}
