import { PageHead } from '../parts/PageHead.tsx';
import type { Route } from '../route.ts';
import { words } from '../words.ts';

/** The Bag place. */
export function Bag({ path }: { readonly path: Route }) {
  return <PageHead title={`${words.places.bag} ${path.join(' ')}`} />;
}
