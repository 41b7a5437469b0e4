// What the phone keeps: its token, the timer, lists of the workshop, and everything entered until it is in the files.
// Written with strict durability where the browser knows it: on the disk before it is called saved.

let open;

function database() {
  open ??= new Promise((resolve, reject) => {
    const request = indexedDB.open('bench', 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore('keep');
      request.result.createObjectStore('queue', { keyPath: 'n', autoIncrement: true });
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  return open;
}

async function run(store, mode, work) {
  const db = await database();
  return new Promise((resolve, reject) => {
    const transaction = db.transaction(store, mode, { durability: 'strict' });
    const request = work(transaction.objectStore(store));
    transaction.oncomplete = () => resolve(request.result);
    transaction.onabort = () => reject(transaction.error);
    transaction.onerror = () => reject(transaction.error);
  });
}

export const kept = (key) => run('keep', 'readonly', (store) => store.get(key));
export const keep = (key, value) => run('keep', 'readwrite', (store) => store.put(value, key));
export const forget = (key) => run('keep', 'readwrite', (store) => store.delete(key));

/** Everything entered, in the order it was. */
export const entered = () => run('queue', 'readonly', (store) => store.getAll());
export const putEntry = (entry) => run('queue', 'readwrite', (store) => store.put(entry));
export const removeEntry = (n) => run('queue', 'readwrite', (store) => store.delete(n));

/** Asks the browser not to clear this storage when the phone is short of room. */
export const askToPersist = () => navigator.storage?.persist?.().catch(() => false);
