// The list of pages: folded by kind, or what fits the words that are looked for.
import { draw } from '../draw.js';

const kinds = {
  '': 'Whole library', symptoms: 'Symptoms', faults: 'Faults', checks: 'Checks', repairs: 'Repairs', series: 'Series', access: 'Access states',
  cautions: 'Cautions', questions: 'Questions', refusals: 'Refusals', coverage: 'Coverage', curves: 'Curves', meters: 'Meters', languages: 'Languages',
};
const order = Object.keys(kinds);
const most = 60;
const folder = path => path.includes('/') ? path.slice(0, path.indexOf('/')) : '';
const place = name => order.includes(name) ? order.indexOf(name) : order.length;

export const kindOf = path => kinds[folder(path)] ?? folder(path);

function line(page, current, entry) {
  const shown = entry(page);
  shown.append(draw('span', { class: 'page-title' }, page.title), draw('span', { class: 'page-path' }, page.path),
    page.wrong ? draw('span', { class: 'page-wrong' }, `${page.wrong} to put right`) : '');
  if (page.path === current) shown.setAttribute('aria-current', 'page');
  return draw('li', {}, shown);
}

function fold(name, pages, current, entry, open) {
  const details = draw('details', { open, 'data-folder': name },
    draw('summary', {}, `${name === 'wrong' ? 'To put right' : kinds[name] ?? name} (${pages.length})`));
  // A thousand lines are drawn when somebody wants to see them.
  const fill = () => { if (details.open && !details.querySelector('ul')) details.append(draw('ul', {}, pages.map(page => line(page, current, entry)))); };
  details.addEventListener('toggle', fill);
  fill();
  return details;
}

/**
 * Draws the list. `entry` makes the link or button of a page, which is still empty.
 * @param {HTMLElement} root
 * @param {{ pages: any[], current?: string, words: string, entry: (page: any) => HTMLElement }} told
 */
export function drawList(root, { pages, current, words, entry }) {
  const asked = words.trim().toLowerCase();
  if (asked) {
    const found = pages.filter(page => page.path.includes(asked) || page.title.toLowerCase().includes(asked));
    root.replaceChildren(draw('ul', {}, found.slice(0, most).map(page => line(page, current, entry))),
      draw('p', { class: 'page-path' }, found.length === 0 ? 'No page fits.' : found.length > most ? `${found.length - most} more fit: write more letters.` : ''));
    return;
  }
  const opened = new Set([...root.querySelectorAll('details')].filter(each => each.open).map(each => each.dataset.folder));
  const by = new Map();
  for (const page of pages) by.set(folder(page.path), [...by.get(folder(page.path)) ?? [], page]);
  const names = [...by.keys()].sort((one, other) => place(one) - place(other) || (one < other ? -1 : 1));
  const wrong = pages.filter(page => page.wrong);
  root.replaceChildren(
    ...(wrong.length ? [fold('wrong', wrong, current, entry, true)] : []),
    ...names.map(name => fold(name, by.get(name), current, entry, opened.has(name) || (current !== undefined && folder(current) === name))),
    ...(pages.length ? [] : [draw('p', {}, 'There are no pages here yet.')]));
}
