import { PageHead } from '../parts/PageHead.tsx';
import type { Route } from '../route.ts';
import { words } from '../words.ts';
import { DisplayChoices } from './DisplayChoices.tsx';

/** The More place. */
export function More({ path }: { readonly path: Route }) {
  return (
    <>
      <PageHead title={`${words.places.more} ${path.join(' ')}`} />
      <DisplayChoices />
    </>
  );
}
