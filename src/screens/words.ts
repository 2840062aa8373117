import { appWords } from './words/app.ts';
import { golfWords } from './words/golf.ts';
import { openWords } from './words/open.ts';
import { restoreWords } from './words/restore.ts';
import { storageWords } from './words/storage.ts';
import { yardagesWords } from './words/yardages.ts';

export { figure, LOCALE } from './words/figure.ts';

/** The texts of the app but those of its larger places, which keep theirs beside this file in words/. */
export const words = {
  ...appWords,
  ...golfWords,
  ...openWords,
  ...yardagesWords,
  restore: restoreWords,
  storage: storageWords,
} as const;
