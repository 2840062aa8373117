import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

const root = fileURLToPath(new URL('.', import.meta.url));

/** What the app says it is; a test builds a second version under another name. */
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };

const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "font-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types carrybook',
].join('; ');

/** The policy stands in the page itself, so that any plain static host keeps it. Not in development: its client injects styles. */
const policyInPage: Plugin = {
  name: 'carrybook-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: contentSecurityPolicy },
      injectTo: 'head-prepend',
    },
  ],
};

/** The demo season is served beside the app and works offline like the rest of it. */
const demoSeason: Plugin = {
  name: 'carrybook-demo',
  apply: 'build',
  generateBundle() {
    for (const name of readdirSync(join(root, 'demo')).filter((name) => name.endsWith('.json'))) {
      this.emitFile({ type: 'asset', fileName: `demo/${name}`, source: readFileSync(join(root, 'demo', name)) });
    }
  },
};

export default defineConfig({
  root,
  base: './',
  define: {
    'import.meta.env.VITE_CARRYBOOK_VERSION': JSON.stringify(process.env.CARRYBOOK_VERSION ?? version),
  },
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  // Its usual entry is the build for old browsers, a tenth larger.
  resolve: { alias: { dexie: join(root, 'node_modules/dexie/dist/modern/dexie.mjs') } },
  worker: { format: 'es' },
  build: {
    target: 'es2022',
    // An inlined asset is a data: address, and the page's policy allows none but for pictures.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  preview: {
    headers: {
      // What a page cannot say about itself in a meta tag comes on top.
      'Content-Security-Policy': `${contentSecurityPolicy}; frame-ancestors 'none'`,
      'X-Content-Type-Options': 'nosniff',
      'Referrer-Policy': 'no-referrer',
      'Cross-Origin-Opener-Policy': 'same-origin',
    },
  },
  plugins: [
    policyInPage,
    demoSeason,
    VitePWA({
      registerType: 'prompt',
      injectRegister: null,
      includeManifestIcons: false,
      manifest: {
        name: 'Carrybook',
        short_name: 'Carrybook',
        description: 'What each club and each partial swing really carries, with how sure we are.',
        lang: 'en',
        start_url: './',
        scope: './',
        display: 'standalone',
        orientation: 'any',
        background_color: '#fbf8f0',
        theme_color: '#fbf8f0',
        icons: [
          { src: 'icons/icon-192.png', sizes: '192x192', type: 'image/png', purpose: 'any' },
          { src: 'icons/icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any' },
          { src: 'icons/icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
        ],
      },
      workbox: {
        globPatterns: ['**/*.{js,css,html,json,svg,png}'],
        maximumFileSizeToCacheInBytes: 8 * 1024 * 1024,
        clientsClaim: true,
        skipWaiting: false,
        cleanupOutdatedCaches: true,
        // One file: the page's policy lets a service worker load no second script.
        inlineWorkboxRuntime: true,
        sourcemap: false,
      },
    }),
  ],
});
