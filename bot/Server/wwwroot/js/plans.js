// Pictures of the pages. The program draws; here they are moved, enlarged and followed to their pages.
import { at, draw } from './draw.js';
import { drawing } from './picture.js';
import { zoomed } from './plans/zoom.js';
import { ask } from './post.js';

/** @returns {HTMLInputElement | HTMLSelectElement} */
const field = id => /** @type {any} */ (at(id));
const wanted = new URLSearchParams(location.search);
const zoom = zoomed(at('paper'));
let walks = null;
let asked = 0;

function chosen() {
  const values = { kind: field('kind').value, series: field('series').value };
  if (values.kind !== 'coverage') values.symptom = field('symptom').value;
  if (values.kind === 'walk' && field('checks').value !== '') values.checks = field('checks').value;
  return new URLSearchParams(Object.entries(values).filter(([, value]) => value !== ''));
}

const option = (value, text) => draw('option', { value }, text);

function fill(select, entries, before) {
  select.replaceChildren(...entries.map(entry => option(entry.id, entry.title)));
  if (entries.some(entry => entry.id === before)) select.value = before;
}

// A series shows some symptoms only; what the pages cover can be seen for all series at once.
function offer(series, symptom) {
  const covers = field('kind').value === 'coverage';
  fill(field('series'), [...(covers ? [{ id: '', title: 'All series' }] : []), ...walks.series], series);
  const shown = walks.series.find(entry => entry.id === field('series').value)?.symptoms ?? [];
  fill(field('symptom'), walks.symptoms.filter(entry => shown.includes(entry.id)), symptom);
  field('symptom').closest('p').hidden = covers;
  field('checks').closest('p').hidden = field('kind').value !== 'walk';
}

function show(drawn) {
  const made = drawing(drawn);
  for (const way of made.querySelectorAll('a')) way.setAttribute('href', `/?page=${encodeURIComponent(way.getAttribute('href').slice(1))}`);
  made.setAttribute('role', 'group');
  made.setAttribute('aria-label', made.querySelector('title').textContent);
  at('paper').replaceChildren(made);
  at('paper').classList.toggle('is-page', drawn.page);
  at('words').replaceChildren(...drawn.lines.map(line => draw('li', { class: line.depth > 0 ? 'plans-inner' : '' }, line.text)));
}

async function refresh(keepsSize) {
  const query = chosen();
  const number = ++asked;
  history.replaceState(null, '', `?${query}`);
  at('state').textContent = 'Drawing…';
  try {
    const drawn = await ask(`/api/preview/picture?${query}`);
    if (number !== asked) return;
    show(drawn);
    if (!keepsSize) zoom.legible();
    at('keep', HTMLAnchorElement).href = `/api/preview/picture.svg?${query}`;
    at('state').textContent = '';
  } catch (error) {
    if (number !== asked) return;
    at('paper').replaceChildren();
    at('words').replaceChildren();
    at('state').textContent = error.status ? error.message : 'The program does not answer.';
  }
  document.body.dataset.ready = String(number);
}

async function begin() {
  walks = (await ask('/api/preview/pages')).walks;
  if (walks === null) {
    at('state').textContent = 'Nothing can be drawn before the pages are free of errors.';
    return;
  }
  offer(field('series').value || wanted.get('series') || '', field('symptom').value || wanted.get('symptom') || '');
  await refresh(at('paper').firstChild !== null);
}

if (wanted.has('kind')) field('kind').value = wanted.get('kind');
field('checks').value = wanted.get('checks') ?? '';
for (const button of /** @type {NodeListOf<HTMLElement>} */ (document.querySelectorAll('[data-size]'))) button.addEventListener('click', () => zoom[button.dataset.size]());
at('print').addEventListener('click', () => print());
at('choice').addEventListener('submit', event => event.preventDefault());
at('choice').addEventListener('change', () => {
  offer(field('series').value, field('symptom').value);
  refresh(false);
});
const changes = new EventSource('/api/preview/changes');
changes.addEventListener('pages', begin);
changes.addEventListener('error', () => {
  if (walks === null) at('state').textContent = 'Pictures are drawn beside the preview of the pages. Start it with: content preview.';
});
