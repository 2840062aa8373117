import { expect, test } from 'vitest';
import { ownScriptUrl } from '../../src/worker/trustedScriptUrl.ts';

const page = 'https://book.example/app/#/yardages';

test('a script beside the page is let through with its whole address', () => {
  expect(ownScriptUrl('./assets/entry.js', page)).toBe('https://book.example/app/assets/entry.js');
});

test.each([
  'https://elsewhere.example/entry.js',
  '//elsewhere.example/entry.js',
  'data:text/javascript,1',
  'blob:null/1',
])('%s is refused by name', (url) => {
  expect(() => ownScriptUrl(url, page)).toThrow(/is not a script of this app/);
});
