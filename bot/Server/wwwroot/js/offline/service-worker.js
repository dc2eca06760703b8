// Keeps the pages of the program on this device. The server puts `shell` before this text: its version and its files.
const current = `page ${shell.version}`;
/** @type {[RegExp, string][]} */
const pages = [
  [/^\/(case\/[^/]+)?$/, '/case.html'], [/^\/case\/[^/]+\/sheet$/, '/sheet.html'], [/^\/cases$/, '/cases.html'],
  [/^\/case\/[^/]+\/job$/, '/job.html'], [/^\/case\/[^/]+\/call$/, '/call.html'],
  [/^\/device$/, '/device.html'], [/^\/pages$/, '/pages.html'], [/^\/pages\/write\//, '/write.html'],
];

async function fill() {
  const cache = await caches.open(current);
  await cache.addAll(shell.files.map(file => new Request(file, { cache: 'reload' })));
}

async function clear() {
  for (const other of await caches.keys()) if (other.startsWith('page ') && other !== current) await caches.delete(other);
  await clients.claim();
}

/**
 * @param {string} path
 * @param {Request} request
 */
async function ofShell(path, request) {
  return (await (await caches.open(current)).match(path)) ?? fetch(request);
}

// A page that needs the server says so itself; where there is none of it here, the sheets that are here are shown.
/** @param {Request} request */
async function ofServer(request) {
  try {
    return await fetch(request);
  } catch (problem) {
    const list = await (await caches.open(current)).match('/cases.html');
    if (!list) throw problem;
    return list;
  }
}

// The engine and the packs of pages lie below their version, so what is kept never changes.
/** @param {Request} request */
async function ofShelf(request) {
  return (await caches.match(request, { ignoreVary: true })) ?? fetch(request);
}

addEventListener('install', event => event.waitUntil(fill()));
addEventListener('activate', event => event.waitUntil(clear()));

// New pages take over between cases: the page says when.
addEventListener('message', ({ data }) => { if (data === 'take over') skipWaiting(); });

addEventListener('fetch', event => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== location.origin) return;
  if (/^\/offline\/(engine|pages)\//.test(pathname)) event.respondWith(ofShelf(request));
  else if (request.mode === 'navigate') {
    const page = pages.find(([address]) => address.test(pathname))?.[1];
    if (page && shell.files.includes(page)) event.respondWith(ofShell(page, request));
    else if (!pathname.startsWith('/api/')) event.respondWith(ofServer(request));
  } else if (shell.files.includes(pathname)) event.respondWith(ofShell(pathname, request));
});
