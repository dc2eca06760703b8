// The cases that this device knows: what the server has of them, and the answers that wait to be sent. One record a case:
// see Kept.Case.
/** @type {Map<string, Kept.Case>} */
const inMemory = new Map();
const mostKept = 12;
/** @type {Promise<IDBDatabase> | null} */
let opened = null;

/**
 * @template Result
 * @param {IDBRequest<Result>} asked
 * @returns {Promise<Result>}
 */
function request(asked) {
  return new Promise((resolve, reject) => {
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error);
  });
}

function open() {
  const asked = indexedDB.open('job sheets', 1);
  asked.onupgradeneeded = () => asked.result.createObjectStore('cases', { keyPath: 'id' });
  return request(asked);
}

/** @param {IDBTransactionMode} mode */
async function store(mode) {
  opened ??= open();
  return (await opened).transaction('cases', mode, { durability: 'strict' }).objectStore('cases');
}

/**
 * The record of a case; null when there is none. What could not be written is found for as long as the page is open.
 * @param {string} id
 * @returns {Promise<Kept.Case | null>}
 */
export async function read(id) {
  if (inMemory.has(id)) return structuredClone(inMemory.get(id) ?? null);
  try { return (await request((await store('readonly')).get(id))) ?? null; } catch { return null; }
}

/**
 * Whether it is safe on the device; a full disk or a private window may keep it for this page only.
 * @param {Kept.Case} record
 */
export async function write(record) {
  try {
    const cases = await store('readwrite');
    const done = new Promise((resolve, reject) => {
      cases.transaction.oncomplete = resolve;
      cases.transaction.onabort = () => reject(cases.transaction.error);
    });
    cases.put({ ...record, at: Date.now() });
    await done;
    inMemory.delete(record.id);
    return true;
  } catch {
    inMemory.set(record.id, structuredClone(record));
    return false;
  }
}

/** Whether this browser keeps anything at all; a private window may not. */
export const keeps = () => store('readonly').then(() => 'caches' in globalThis, () => false);

/** @param {string} id */
export async function remove(id) {
  inMemory.delete(id);
  try { await request((await store('readwrite')).delete(id)); } catch { /* nothing was kept */ }
}

/** @type {(record: Kept.Case) => record is Kept.Whole} */
const isShown = /** @returns {record is Kept.Whole} */ record => record.view !== null;

/** @returns {Promise<Kept.Whole[]>} */
export async function list() {
  /** @type {Kept.Case[]} */
  let kept = [];
  try { kept = await request((await store('readonly')).getAll()); } catch { /* nothing is kept */ }
  return [...inMemory.values(), ...kept.filter(record => !inMemory.has(record.id))].filter(isShown).sort((a, b) => (b.at ?? 0) - (a.at ?? 0));
}

/**
 * Drops the oldest cases of which nothing waits.
 * @param {string} openCase
 */
export async function tidy(openCase) {
  const idle = (await list()).filter(record => record.id !== openCase && record.away.length === 0 && record.left.length === 0);
  for (const record of idle.slice(mostKept)) await remove(record.id);
}

/**
 * One at a time, over all windows of this device.
 * @template Result
 * @param {string} id
 * @param {() => Promise<Result>} work
 * @returns {Promise<Result>}
 */
export function alone(id, work) {
  return navigator.locks ? navigator.locks.request(`case ${id}`, work) : work();
}
