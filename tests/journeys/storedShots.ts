import type { Page } from '@playwright/test';

/** Every shot in the phone's own store, raw, as the browser has it on the disk: of open and of closed rounds. */
export function storedShots(page: Page): Promise<unknown[]> {
  return page.evaluate(async () => {
    const answer = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const db = await answer(indexedDB.open('carrybook'));
    try {
      const reading = db.transaction(['shots', 'closedShots'], 'readonly');
      const open: unknown[] = await answer(reading.objectStore('shots').getAll());
      const closed: { shots: unknown[] }[] = await answer(reading.objectStore('closedShots').getAll());
      return [...open, ...closed.flatMap((round) => round.shots)];
    } finally {
      db.close();
    }
  });
}
