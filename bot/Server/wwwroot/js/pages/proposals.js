// All proposals, newest first.
import { at, day, draw } from '../draw.js';
import { listProposals } from './requests.js';
import { standing } from './standing.js';

const views = { waiting: 'Waiting', mine: 'Handed in by me', all: 'All' };
let view = 'waiting';
let all = [];

const fits = { waiting: each => each.stands === 'fits' || each.stands === 'overtaken', mine: each => each.mine, all: () => true };

function row(each) {
  return draw('tr', {},
    draw('td', {}, draw('a', { href: `/proposals/${each.number}` }, `${each.number}. ${each.note.split('\n')[0]}`)),
    draw('td', {}, each.paths.join(', ')), draw('td', {}, each.by),
    draw('td', { class: each.stands === 'overtaken' || each.errors ? 'open' : '' }, standing(each)),
    draw('td', {}, day(each.at)));
}

function show() {
  at('views').replaceChildren(...Object.entries(views).map(([name, text]) =>
    draw('button', { type: 'button', 'aria-pressed': String(name === view), onclick: () => { view = name; show(); at('views').querySelectorAll('button')[Object.keys(views).indexOf(name)].focus(); } }, text)));
  const shown = all.filter(fits[view]);
  at('rows').replaceChildren(...shown.map(row));
  at('count').textContent = shown.length === 0 ? 'No proposal here.' : shown.length === 1 ? '1 proposal' : `${shown.length} proposals`;
}

try {
  all = await listProposals();
  show();
} catch (problem) {
  at('count').textContent = problem.status ? problem.message : 'No connection to the server.';
}
document.body.dataset.ready = 'yes';
