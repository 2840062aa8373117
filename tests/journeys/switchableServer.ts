import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
};

/** A plain static host whose files can be exchanged, and which can go and come back at the same address. */
export interface SwitchableServer {
  readonly address: string;
  /** Serves another folder from now on. */
  readonly serve: (folder: string) => void;
  readonly stop: () => Promise<void>;
  readonly start: () => Promise<void>;
}

/** Starts the host on any free port. */
export async function switchableServer(first: string): Promise<SwitchableServer> {
  let folder = first;
  let port = 0;
  let server: Server | undefined;
  const start = () =>
    new Promise<void>((resolve, reject) => {
      const starting = createServer((request, response) => {
        const { pathname } = new URL(request.url ?? '/', 'http://localhost');
        const file = join(folder, normalize(pathname === '/' ? '/index.html' : pathname));
        try {
          const body = readFileSync(file);
          response.writeHead(200, {
            'content-type': types[extname(file)] ?? 'text/plain',
            'cache-control': 'no-cache',
          });
          response.end(body);
        } catch (error) {
          response.writeHead(404).end(String(error));
        }
      });
      starting.once('error', reject);
      starting.listen(port, 'localhost', () => {
        port = (starting.address() as AddressInfo).port;
        server = starting;
        resolve();
      });
    });
  await start();
  return {
    address: `http://localhost:${port}/`,
    serve: (next) => {
      folder = next;
    },
    stop: () =>
      new Promise((resolve, reject) => {
        server?.closeAllConnections();
        server?.close((error) => (error ? reject(error) : resolve()));
      }),
    start,
  };
}
