import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

const folder = fileURLToPath(new URL('../../node_modules/.cache/carrybook/empty-page/', import.meta.url));

const PAGE = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Empty</title></head>
<body><div id="app"></div><script type="module" src="/main.js"></script></body></html>`;

const SCRIPT = `import { h, render } from 'preact';
import { useState } from 'preact/hooks';
function Empty() {
  const [pressed, press] = useState(0);
  return h('button', { type: 'button', 'data-first-key': '', onClick: () => press(pressed + 1) }, 'pressed ' + pressed);
}
render(h(Empty), document.getElementById('app'));
navigator.serviceWorker.register('./sw.js');`;

/** Builds a page with one key, drawn by the same library and kept offline by the same means; gives its folder. */
export async function buildEmptyPage(): Promise<string> {
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'index.html'), PAGE);
  writeFileSync(join(folder, 'main.js'), SCRIPT);
  const outDir = join(folder, 'dist');
  await build({
    root: folder,
    base: './',
    configFile: false,
    logLevel: 'error',
    build: { outDir, emptyOutDir: true, target: 'es2022', modulePreload: { polyfill: false } },
    plugins: [
      VitePWA({
        registerType: 'prompt',
        injectRegister: null,
        manifest: false,
        workbox: { clientsClaim: true, inlineWorkboxRuntime: true, sourcemap: false },
      }),
    ],
  });
  return outDir;
}
