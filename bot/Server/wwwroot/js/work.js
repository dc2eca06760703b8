// The work list: search as you type, filters, kept views, keys, and changes as they happen.
import { at, day, draw, within } from './draw.js';
import { readFilters, readOn, readWork, Refused, waitingCalls } from './post.js';
import { drawCalls } from './calls.js';

const boxes = ['find', 'series', 'fault', 'stands', 'order'];
/** @type {Record<string, string>} */
const ends = { repaired: 'repaired', watch: 'watched', book: 'next visit', 'other-unit': 'other unit' };
const store = 'work-views';
const wait = 120;
const first = 100;
const most = 1000;
/** @type {string | null} */
let next = null; // the address of the page after the last one shown
let asked = 0;
let timer = 0;
let turn = Promise.resolve();

/** @param {string} name */
const box = name => /** @type {HTMLInputElement | HTMLSelectElement} */ (at(name));
/** @typedef {{ find: string } & Record<string, string>} View */
/** @returns {View} what is asked for */
const view = () => ({ find: '', ...Object.fromEntries(boxes.map(name => [name, box(name).value])) });
/** @returns {{ name: string, view: View }[]} */
const keptViews = () => { try { return JSON.parse(localStorage.getItem(store) ?? '[]'); } catch { return []; } };

/** @param {{ case: Told.Listed & { ended?: string }, series: string, fault: string }} line */
function row({ case: sheet, series, fault }) {
  return draw('tr', {},
    draw('td', {}, draw('a', { href: `/case/${encodeURIComponent(sheet.id)}` }, sheet.title || 'Sheet without a complaint')),
    draw('td', {}, series), draw('td', {}, fault),
    draw('td', { class: sheet.ended ? '' : 'open' }, sheet.ended ? ends[sheet.ended] ?? sheet.ended : 'open'),
    draw('td', {}, day(sheet.lastAt)));
}

// One after the other: a list that is read anew and one that is read on would else undo each other.
/** @param {() => Promise<void>} work */
const inTurn = work => (turn = turn.then(work));

const front = () => first;
// As many as were shown, so that a change elsewhere does not take away what was read on to; and the next few where all were shown.
const shown = () => Math.min(Math.max(next ? links().length : first * Math.ceil((links().length + 1) / first), first), most);

/** @param {() => number} limit */
const show = (limit = front) => {
  const mine = ++asked;
  return inTurn(() => mine === asked ? read(mine, limit()) : Promise.resolve()); // else a later question was asked meanwhile
};

/**
 * @param {number} mine
 * @param {number} limit
 */
async function read(mine, limit) {
  try {
    const [found, waiting] = await Promise.all([readWork(view(), limit), waitingCalls(view().find)]);
    if (mine !== asked) return;
    drawCalls(at('waiting'), waiting);
    at('calls').hidden = waiting.length === 0;
    const place = links().findIndex(link => link === document.activeElement);
    const held = links()[place]?.getAttribute('href');
    at('rows').replaceChildren(...found.rows.map(row));
    // Who stands at a sheet stays at it, or where it stood when it is no longer among those shown.
    if (held) (links().find(link => link.getAttribute('href') === held) ?? links()[Math.min(place, links().length - 1)])?.focus();
    came(found.next);
  } catch (problem) {
    if (mine === asked) failed(problem);
  }
  document.body.dataset.ready = String(mine);
}

// To the first of the new lines.
const more = () => inTurn(async () => {
  if (!next) return;
  try {
    const found = await readOn(next);
    const before = links().length;
    at('rows').append(...found.rows.map(row));
    came(found.next);
    links()[before]?.focus();
  } catch (problem) {
    failed(problem);
  }
});

/** @param {string | null} after */
function came(after) {
  next = after;
  const lines = links().length;
  at('more').hidden = !next;
  at('count').textContent = next ? `The first ${lines} sheets that fit.` : lines === 0 ? 'No sheet fits.' : lines === 1 ? '1 sheet fits.' : `${lines} sheets fit.`;
}

/** @param {unknown} problem */
function failed(problem) {
  at('count').textContent = problem instanceof Refused ? problem.message : 'No connection to the server. The list shown may be old.';
}

function later() {
  clearTimeout(timer);
  timer = setTimeout(show, wait, front);
}

/**
 * @param {View} one
 * @param {View} other
 */
const same = (one, other) => boxes.every(name => (one[name] ?? '') === (other[name] ?? ''));

function drawViews() {
  const now = view();
  const kept = keptViews();
  at('views').replaceChildren(
    ...kept.map((one, place) => draw('button', { type: 'button', 'aria-pressed': String(same(one.view, now)), onclick: () => use(one.view) }, `${place + 1} ${one.name}`)),
    ...(kept.some(one => same(one.view, now))
      ? [draw('button', { type: 'button', onclick: () => keep(kept.filter(one => !same(one.view, now))) }, 'Drop this view')]
      : kept.length < 9 ? [draw('button', { type: 'button', onclick: () => keep([...kept, { name: nameOf(now), view: now }]) }, 'Keep this view')] : []));
}

/** @param {{ name: string, view: View }[]} views */
function keep(views) {
  localStorage.setItem(store, JSON.stringify(views));
  drawViews();
}

/** @param {string} name */
const chosen = name => at(name, HTMLSelectElement).selectedOptions[0]?.textContent ?? '';
/** @param {View} now */
const nameOf = now => [now.find, now.series && chosen('series'), now.fault && chosen('fault'), now.stands, now.order !== 'newest' && chosen('order')].filter(Boolean).join(', ') || 'all sheets';

/** @param {View} one */
function use(one) {
  for (const name of boxes) box(name).value = one[name] ?? '';
  changed(() => show());
}

/** @param {() => void} then */
function changed(then) {
  const now = view();
  history.replaceState(null, '', `?${new URLSearchParams(Object.entries(now).filter(([, value]) => value))}`);
  drawViews();
  then();
}

const links = () => [...at('rows').querySelectorAll('a')];

/** @param {number} step */
function move(step) {
  const all = links();
  if (step > 0 && document.activeElement === all.at(-1)) { more(); return; }
  const place = all.findIndex(link => link === document.activeElement) + step;
  if (place < 0) at('find').focus();
  else all[Math.min(place, all.length - 1)]?.focus();
}

/** @param {KeyboardEvent} event */
function onKey(event) {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const typing = within(event, 'input, select') !== null;
  const choosing = within(event, 'select') !== null;
  if (event.key === 'ArrowDown' && !choosing) move(1);
  else if (event.key === 'ArrowUp' && !choosing) move(-1);
  else if (event.key === 'Escape') { at('find').focus(); at('find', HTMLInputElement).select(); }
  else if (event.key === 'Enter' && event.target === at('find')) links()[0]?.click();
  else if (!typing && event.key === '/') at('find').focus();
  else if (!typing && /^[1-9]$/.test(event.key) && keptViews()[Number(event.key) - 1]) use(keptViews()[Number(event.key) - 1].view);
  else return;
  event.preventDefault();
}

async function begin() {
  try {
    /** @type {Record<'series' | 'faults', { id: string, title: string }[]>} */
    const words = await readFilters();
    for (const { name, choices } of [{ name: 'series', choices: words.series }, { name: 'fault', choices: words.faults }])
      at(name).append(...choices.map(choice => draw('option', { value: choice.id }, choice.title)));
  } catch { /* the list says that there is no connection */ }
  const told = new URLSearchParams(location.search);
  for (const name of boxes) box(name).value = told.get(name) ?? box(name).value;
  drawViews();
  await show();
  const changes = new EventSource('/api/work/changes');
  changes.addEventListener('message', () => {
    clearTimeout(timer);
    timer = setTimeout(show, wait, shown);
  });
}

at('find').addEventListener('input', () => changed(later));
for (const name of boxes.slice(1)) at(name).addEventListener('change', () => changed(() => show()));
at('more').addEventListener('click', () => more());
document.addEventListener('keydown', onKey);
begin();
