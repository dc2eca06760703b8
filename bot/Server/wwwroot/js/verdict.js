// A verdict: what was read, what was expected, the word for it, and how it was worked out.
import { draw } from './draw.js';
import { hasMark, mark } from './marks.js';
import { pictures } from './picture.js';

/** @param {{ healthy?: boolean }} figures */
export const standing = figures => figures.healthy === true ? 'sound' : figures.healthy === false ? 'unsound' : 'unsettled';

/**
 * @param {string} name
 * @param {any[]} content
 */
const line = (name, ...content) => [draw('dt', {}, name), draw('dd', {}, ...content)];

/** @param {Told.Reading} reading */
const shownReading = reading => draw('span', { class: reading.odd ? 'reading odd' : 'reading' },
  reading.label ? draw('span', { class: 'reading-label' }, reading.label) : null,
  draw('span', { class: 'reading-value' }, reading.value),
  reading.odd ? draw('span', { class: 'reading-odd' }, '◄ odd one') : null);

/** @param {{ verdict: string, healthy?: boolean }} figures */
export function stamp(figures) {
  const drawn = hasMark(figures.verdict) ? figures.verdict : figures.healthy === true ? 'within' : 'unsettled';
  return draw('span', { class: `stamp ${standing(figures)}` }, mark(drawn), draw('span', {}, figures.verdict));
}

/**
 * @param {Told.Segment} segment
 * @param {Told.Figures} figures
 */
export function verdict(segment, figures) {
  return draw('div', { class: `verdict ${standing(figures)}` },
    stamp(figures),
    draw('p', { class: 'verdict-says' }, segment.text),
    draw('dl', { class: 'verdict-lines' },
      line('Read', figures.readings.map(shownReading)),
      figures.expected.length ? line('Expected', figures.expected.map(text => draw('span', { class: 'expected' }, text))) : []),
    pictures([segment]),
    draw('details', { class: 'working' },
      draw('summary', {}, 'How this was worked out'),
      figures.working.length ? draw('ol', {}, figures.working.map(step => draw('li', {}, step))) : null,
      draw('dl', { class: 'verdict-lines' }, line('Rule', figures.rule), line('Source', figures.source))));
}
