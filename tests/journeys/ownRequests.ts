import type { BrowserContext } from '@playwright/test';

/** What was asked of the network, and what the browser complained of, since the watching began. */
export interface Watched {
  readonly requests: string[];
  readonly complaints: string[];
  /** The requests to anywhere but the app's own origin. */
  readonly foreign: () => string[];
}

/** Watches every page and worker of a browser for requests and complaints. */
export function watchRequests(context: BrowserContext, origin: string): Watched {
  const requests: string[] = [];
  const complaints: string[] = [];
  context.on('request', (request) => requests.push(request.url()));
  context.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  context.on('weberror', (error) => complaints.push(error.error().message));
  // A blob: address is a file made on the page itself.
  const isOwn = (url: string) => url.startsWith(origin) || url.startsWith(`blob:${origin}`);
  return { requests, complaints, foreign: () => requests.filter((url) => !isOwn(url)) };
}
