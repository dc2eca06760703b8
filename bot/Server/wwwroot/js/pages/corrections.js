// What changes on a page, as a proofreader writes it: struck out, written in, with the line's number in the margin.
import { draw } from '../draw.js';

const names = { out: 'taken out', in: 'put in' };

function line(change) {
  if (change.mark === 'left-out')
    return draw('li', { class: 'line left-out' }, draw('span', { class: 'line-text' }, change.lines === 1 ? '1 line stays' : `${change.lines} lines stay`));
  const text = change.text === '' ? '\u00a0' : change.text;
  return draw('li', { class: `line ${change.mark}` },
    draw('span', { class: 'line-place' }, change.line),
    draw('span', { class: 'line-text' },
      names[change.mark] ? draw('span', { class: 'unseen' }, `${names[change.mark]}: `) : '',
      change.mark === 'out' ? draw('del', {}, text) : change.mark === 'in' ? draw('ins', {}, text) : text),
    names[change.mark] ? draw('span', { class: 'line-mark', 'aria-hidden': 'true' }, change.mark === 'out' ? 'out' : 'in') : '');
}

export function corrections(changes, name) {
  return changes.some(change => names[change.mark])
    ? draw('ol', { class: 'corrections', 'aria-label': name }, changes.map(line))
    : draw('p', { class: 'leaf-note' }, 'Nothing is changed.');
}
