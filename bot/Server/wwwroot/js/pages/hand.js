// Pages in hand: what somebody is writing, kept on this device until it is handed in or put back. Each name has its own.
const prefix = 'in hand';
const last = 'pages in hand of';
let owner = read(last) ?? '';

function read(name) {
  try { return localStorage.getItem(name); } catch { return null; }
}

function write(name, value) {
  try {
    localStorage.setItem(name, value);
    return true;
  } catch {
    return false;
  }
}

const key = path => `${prefix} ${owner} ${path}`;
const note = () => `note in hand ${owner}`;

/** Whose pages are meant, where several people use one device. */
export function belongTo(name) {
  owner = name ?? '';
  write(last, owner);
}

/** What is in hand of a page: { text, before, base, at, gone }, gone when it is taken out; null when nothing is. */
export function inHand(path) {
  try {
    const kept = JSON.parse(read(key(path)));
    return typeof kept?.text === 'string' && typeof kept.before === 'string' && typeof kept.base === 'string' ? kept : null;
  } catch {
    return null;
  }
}

/** All paths in hand, sorted. */
export function pathsInHand() {
  try {
    return Object.keys(localStorage).filter(name => name.startsWith(key(''))).map(name => name.slice(key('').length)).filter(inHand).sort();
  } catch {
    return [];
  }
}

/** A page in hand as the server wants it. */
export const asSent = (path, { text, base, gone }) => gone ? { path, gone, base } : { path, text, base };

/** Keeps a page; false when this device will not. */
export const keep = (path, page) => write(key(path), JSON.stringify(page));

export function putBack(path) {
  try { localStorage.removeItem(key(path)); } catch { /* nothing was kept */ }
}

export const noteInHand = () => read(note()) ?? '';
export const keepNote = text => write(note(), text);

/** Hears of the same page being written in another window. */
export function onOther(path, heard) {
  addEventListener('storage', event => { if (event.key === key(path)) heard(); });
}
