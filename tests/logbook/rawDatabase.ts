/** A database as the browser holds it, without our code: its version, stores and records. */
export interface Dump {
  readonly version: number;
  readonly stores: readonly {
    readonly name: string;
    readonly keyPath: string | string[] | null;
    readonly indexes: readonly string[];
    readonly records: readonly unknown[];
  }[];
}

function answer<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

/** Reads a database whole. */
export async function dumpRaw(factory: IDBFactory, name: string): Promise<Dump> {
  const db = await answer(factory.open(name));
  const names = [...db.objectStoreNames];
  const transaction = db.transaction(names, 'readonly');
  const stores = names.map(async (each) => {
    const store = transaction.objectStore(each);
    const records: unknown[] = await answer(store.getAll());
    return { name: each, keyPath: store.keyPath, indexes: [...store.indexNames], records };
  });
  const read = await Promise.all(stores);
  db.close();
  return { version: db.version, stores: read };
}

/** Makes a database as dumped. */
export async function restoreRaw(factory: IDBFactory, name: string, dump: Dump): Promise<void> {
  const request = factory.open(name, dump.version);
  request.onupgradeneeded = () => {
    for (const { name: store, keyPath, records } of dump.stores) {
      const made = request.result.createObjectStore(store, { keyPath });
      for (const record of records) made.put(record);
    }
  };
  (await answer(request)).close();
}
