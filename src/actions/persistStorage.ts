/** The browser's word on keeping the logbook when space runs short. */
export type Persistence = 'granted' | 'refused' | 'not offered';

/** What this asks of the browser. */
type Persisting = Partial<Pick<StorageManager, 'persist' | 'persisted'>>;

/**
 * Asks the browser to keep the logbook even when space runs short, and tells its answer. Asked again
 * when it was refused: browsers change their mind once an app is installed.
 */
export async function persistStorage(storage: Persisting | undefined = navigator.storage): Promise<Persistence> {
  if (!storage?.persist) return 'not offered';
  try {
    if (storage.persisted && (await storage.persisted())) return 'granted';
    return (await storage.persist()) ? 'granted' : 'refused';
  } catch (error) {
    // A browser that throws instead of answering (opaque origins do) has not granted it.
    if (error instanceof Error || error instanceof DOMException) return 'refused';
    throw error;
  }
}
