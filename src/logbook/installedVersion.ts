/** Dexie counts in tenths: its version 1 is the browser's version 10. */
const STEPS_PER_VERSION = 10;

/**
 * The version of the logbook that the browser holds under a name; 0 when it holds none.
 *
 * Asked before Dexie opens it, because Dexie opens a newer logbook without a word and mends what it
 * thinks is missing. Nothing is created: the probe of an absent one is aborted.
 */
export function installedVersion(factory: IDBFactory, name: string): Promise<number> {
  return new Promise((resolve, reject) => {
    const request = factory.open(name);
    let absent = false;
    request.onupgradeneeded = () => {
      absent = true;
      request.transaction?.abort();
    };
    request.onsuccess = () => {
      const { version } = request.result;
      request.result.close();
      resolve(Math.floor(version / STEPS_PER_VERSION));
    };
    request.onerror = (event) => {
      event.preventDefault();
      if (absent) resolve(0);
      else reject(request.error);
    };
  });
}
