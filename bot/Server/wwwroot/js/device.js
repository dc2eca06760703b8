// What this device keeps to work without signal, and how the page looks and speaks here.
import { at, draw } from './draw.js';
import { keepPages } from './offline/install.js';
import * as notebook from './offline/notebook.js';
import { contents, fetchKit, removeAll } from './offline/shelf.js';
import { settings } from './settings.js';
import { twice } from './twice.js';

const nothing = 'This browser keeps nothing here, as in a private window. With signal all works as ever.';
/** @param {number | undefined} bytes */
const room = (bytes = 0) => `${(bytes / (bytes < 1e9 ? 1e6 : 1e9)).toLocaleString([], { maximumFractionDigits: 1 })} ${bytes < 1e9 ? 'MB' : 'GB'}`;
/**
 * @param {string} name
 * @param {string} content
 */
const box = (name, content) => draw('div', { class: 'box' }, draw('dt', {}, name), draw('dd', {}, content));

/** @param {string} [line] */
async function show(line) {
  const { engines, pages } = await contents();
  const cases = await notebook.list();
  const estimate = await navigator.storage?.estimate?.().catch(() => null);
  const waiting = cases.reduce((sum, record) => sum + record.away.length, 0);
  const ready = engines.length > 0 && pages.length > 0;
  const keeps = await notebook.keeps();
  at('ready').textContent = line ?? (!keeps ? nothing : ready
    ? 'Ready: a walk goes on here when the signal is lost.'
    : 'Not ready yet: what is needed is fetched while a sheet is open and there is signal.');
  at('kept').replaceChildren(
    box('Engine', engines.map(kept => room(kept.bytes)).join(', ') || '—'),
    box('Pages, by version', pages.map(kept => `${kept.version}, ${room(kept.bytes)}`).join('; ') || '—'),
    box('Sheets kept here', String(cases.length)), box('Answers not sent yet', String(waiting)),
    box('Used on this device', estimate ? room(estimate.usage) : '—'), box('Still free for it', estimate ? room((estimate.quota ?? 0) - (estimate.usage ?? 0)) : '—'));
  at('remove', HTMLButtonElement).disabled = !ready;
  at('fetch', HTMLButtonElement).disabled = !keeps;
}

async function fetchNow() {
  let files = 0;
  try {
    const offered = await fetchKit(() => { at('ready').textContent = `Fetching: ${++files} files so far`; });
    await show(offered ? undefined : 'This server offers nothing for work without signal.');
  } catch (problem) {
    await show(problem instanceof Error && problem.name === 'QuotaExceededError'
      ? 'This device has no room for it. Remove something else, then try again.'
      : 'It could not be fetched now. Try again with signal.');
  }
}

function offerInstall() {
  /** @type {(Event & { prompt?: () => void }) | null} */
  let offer = null;
  addEventListener('beforeinstallprompt', event => {
    event.preventDefault();
    offer = event;
    at('install').hidden = false;
  });
  at('install').addEventListener('click', () => offer?.prompt?.());
}

for (const name of ['sun', 'aloud', 'listen']) {
  at(name, HTMLInputElement).checked = settings.get(name);
  at(name).addEventListener('change', () => settings.set(name, at(name, HTMLInputElement).checked));
}
at('voices').textContent = 'speechSynthesis' in window
  ? 'Reading aloud and listening are done by this browser. Listening may send what is heard to the maker of the browser.'
  : 'This browser can neither read aloud nor listen.';
at('aloud', HTMLInputElement).disabled = !('speechSynthesis' in window);
at('listen', HTMLInputElement).disabled = !('SpeechRecognition' in window || 'webkitSpeechRecognition' in window);
at('fetch').addEventListener('click', fetchNow);
twice(at('remove', HTMLButtonElement), 'Remove it: no work without signal', async () => { await removeAll(); await show(); });
offerInstall();
keepPages(true);
await show().catch(() => { at('ready').textContent = nothing; });
document.body.dataset.ready = 'yes';
