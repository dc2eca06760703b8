// What is kept on this device to work without signal: the engine and packs of pages, each whole or not at all.
const mark = '/offline/whole';
const inFlight = 6;

/** @param {string} kind */
async function wholeOnes(kind) {
  /** @type {Kept.Shelved[]} */
  const found = [];
  for (const name of 'caches' in globalThis ? await caches.keys() : []) {
    if (!name.startsWith(`${kind} `)) continue;
    const note = await (await caches.open(name)).match(mark);
    if (note) found.push({ name, ...(await note.json()) });
  }
  return found.sort((a, b) => b.at - a.at);
}

/**
 * @param {Cache} cache
 * @param {Kept.Part} part
 * @param {() => void} onFile
 */
async function fetchAll(cache, part, onFile) {
  const waiting = [...part.files];
  const next = async () => {
    for (let file = waiting.shift(); file !== undefined; file = waiting.shift()) {
      const response = await fetch(part.root + file, { cache: 'no-store' });
      if (!response.ok) throw new Error(`${file}: ${response.status}`);
      await cache.put(part.root + file, response);
      onFile();
    }
  };
  await Promise.all(Array.from({ length: inFlight }, next));
}

/**
 * @param {string} kind
 * @param {Kept.Part} part
 * @param {() => void} onFile
 */
async function take(kind, part, onFile) {
  const name = `${kind} ${part.version}`;
  const cache = await caches.open(name);
  if (await cache.match(mark)) return;
  try {
    await fetchAll(cache, part, onFile);
    const note = { version: part.version, root: part.root, bytes: part.bytes, at: Date.now() };
    await cache.put(mark, new Response(JSON.stringify(note)));
  } catch (problem) {
    await caches.delete(name);
    throw problem;
  }
}

/** Fetches what the server offers and this device lacks; false when the server offers nothing. */
export async function fetchKit(onFile = () => {}) {
  /** @type {Kept.Kit} */
  const kit = await (await fetch('/offline/kit', { cache: 'no-store' })).json();
  if (!kit.engine || !kit.pack) return false;
  await take('engine', kit.engine, onFile);
  await take('pages', kit.pack, onFile);
  return true;
}

/**
 * The engine and the pages to work on: those of a version when they are here, else the newest. Null when there are none.
 * @param {string | null} version
 */
export async function kitFor(version) {
  const [engine] = await wholeOnes('engine');
  const pages = await wholeOnes('pages');
  const chosen = pages.find(kept => kept.version === version) ?? pages[0];
  return engine && chosen ? { engine, pages: chosen } : null;
}

/** @param {Kept.Shelved} pages */
export async function readPack(pages) {
  const kept = await (await caches.open(pages.name)).match(`${pages.root}pack`);
  if (!kept) throw new Error('the pages are not kept here any more');
  return kept.arrayBuffer();
}

/**
 * Removes all engines but the newest, and all pages but the newest and those of some versions.
 * @param {(string | null)[]} versions
 */
export async function clearOld(versions) {
  const [, ...engines] = await wholeOnes('engine');
  const [, ...pages] = await wholeOnes('pages');
  for (const old of [...engines, ...pages.filter(kept => !versions.includes(kept.version))]) await caches.delete(old.name);
}

export const contents = async () => ({ engines: await wholeOnes('engine'), pages: await wholeOnes('pages') });

export async function removeAll() {
  for (const name of await caches.keys()) if (/^(engine|pages) /.test(name)) await caches.delete(name);
}
