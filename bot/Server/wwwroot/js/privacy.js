// What is kept about people, for everybody; and for the desk, what is kept about one of them.
import { at, day, draw } from './draw.js';
import { held } from './held.js';
import { findPerson, readPrivacy, readSession, Refused, removeWords } from './post.js';
import { twice } from './twice.js';

/** @type {(name: string, ...children: any[]) => HTMLElement} */
const cell = (name, ...children) => draw('td', { 'data-name': name }, ...children);

/** @param {unknown} problem */
function say(problem) {
  at('trouble').textContent = problem instanceof Refused ? problem.message : 'No connection to the server.';
  at('trouble').scrollIntoView({ block: 'nearest' });
}

/**
 * @param {string} id
 * @param {string} title
 */
function remover(id, title) {
  const button = draw('button', { type: 'button', 'aria-label': `Remove from ${title}` }, 'Remove');
  return twice(button, 'Remove for good', async () => {
    try {
      await removeWords(id);
      const back = held();
      button.replaceWith('Removed');
      back();
    } catch (problem) { say(problem); }
  });
}

/** @param {{ id: string, shows?: string, unit: string, lastAt: string }} sheet */
function row(sheet) {
  const title = sheet.shows || 'Sheet without a complaint';
  return draw('tr', {},
    draw('th', { scope: 'row' }, draw('a', { href: `/case/${encodeURIComponent(sheet.id)}` }, title)),
    cell('Unit', sheet.unit), cell('Last entry', day(sheet.lastAt)), draw('td', { class: 'acts' }, remover(sheet.id, title)));
}

/** @param {Event} event */
async function find(event) {
  event.preventDefault();
  at('trouble').textContent = '';
  const about = at('about', HTMLInputElement).value.trim();
  try {
    const found = await findPerson(about);
    at('rows').replaceChildren(...found.map(row));
    at('found').hidden = found.length === 0;
    at('count').textContent = found.length === 0 ? 'No sheet speaks of that.' : found.length === 1 ? '1 sheet speaks of that.' : `${found.length} sheets speak of that.`;
    at('all').hidden = false;
    at('all', HTMLAnchorElement).href = `/api/personal?${new URLSearchParams({ about })}`;
  } catch (problem) { say(problem); }
}

try {
  /** @type {{ lead: string, kinds: Record<'what' | 'why' | 'howLong', string>[], rights: string[] }} */
  const page = await readPrivacy();
  at('lead').textContent = page.lead;
  at('kinds').replaceChildren(...page.kinds.map(kind => draw('tr', {},
    draw('th', { scope: 'row' }, kind.what), cell('Why', kind.why), cell('How long', kind.howLong))));
  at('rights').replaceChildren(...page.rights.map(line => draw('li', {}, line)));
  const session = await readSession();
  at('desk').hidden = !session.roles.some(role => role === 'desk' || role === 'administrator');
  at('find').addEventListener('submit', find);
} catch (problem) { say(problem); }
document.body.dataset.ready = 'yes';
