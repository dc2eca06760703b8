// What it could be: the faults still in question, as bars with their figures beside them; a tap asks what speaks for one.
import { draw } from './draw.js';

/** @param {Told.Belief} line */
const percent = line => {
  const value = line.probability * 100;
  return value > 0 && value < 1 ? 'under\u00a01\u00a0%' : `${Math.min(99, Math.round(value))}\u00a0%`;
};

/**
 * @param {Told.Belief} line
 * @param {import('./slip.js').Send} send
 */
function bar(line, send) {
  const filled = draw('span', { class: 'bar-filled' });
  filled.style.inlineSize = `${Math.max(0.5, line.probability * 100)}%`;
  return draw('li', {},
    draw('button', { type: 'button', class: 'quiet bar-title', onclick: () => send({ text: `why not ${line.title}` }, `Why not: ${line.title}?`) }, line.title),
    draw('span', { class: 'bar-figure' }, percent(line)),
    draw('span', { class: 'bar', 'aria-hidden': 'true' }, filled));
}

/**
 * @param {Told.Belief[]} lines
 * @param {import('./slip.js').Send} send
 */
export function belief(lines, send) {
  if (lines.length === 0) return null;
  return draw('details', { class: 'belief' },
    draw('summary', {}, draw('span', {}, 'Could be'), ' ', draw('span', { class: 'belief-first' }, `${lines[0].title} ${percent(lines[0])}`)),
    draw('p', { class: 'bars-note' }, 'Tap a fault to see what speaks for it and against it.'),
    draw('ol', { class: 'bars' }, lines.map(line => bar(line, send))));
}
