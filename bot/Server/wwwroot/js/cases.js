// The list of earlier cases; without signal, of those that this device knows.
import { at, day, draw } from './draw.js';
import { keepPages } from './offline/install.js';
import { listKept } from './offline/list.js';
import { listCases, Refused } from './post.js';

const trouble = at('trouble');

/** @param {Told.Listed} line */
const entry = line => draw('li', {},
  draw('a', { href: `/case/${encodeURIComponent(line.id)}` }, draw('span', { class: 'index-title' }, line.title),
    line.waiting ? draw('span', { class: 'unsaved' }, `${line.waiting} not sent yet`) : null, day(line.lastAt)));

/**
 * @param {Told.Listed[]} cases
 * @param {string} line
 */
function show(cases, line) {
  at('index').replaceChildren(...cases.map(entry));
  trouble.textContent = line;
}

try {
  const cases = await listCases();
  const waiting = new Map((await listKept()).map(kept => [kept.id, kept]));
  const unsent = [...waiting.values()].filter(kept => kept.waiting > 0 && !cases.some(line => line.id === kept.id));
  show([...unsent, ...cases.map(line => ({ ...line, waiting: waiting.get(line.id)?.waiting }))],
    cases.length + unsent.length === 0 ? 'No sheet has been filled in yet.' : '');
} catch (problem) {
  if (problem instanceof Refused) trouble.textContent = problem.message;
  else show(await listKept(), 'No signal: these are the sheets that this device knows.');
}
keepPages(true);
document.body.dataset.ready = 'yes';
