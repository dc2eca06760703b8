// The sheet itself: the boxes at its head and the numbered rows.
import { day, draw, time } from './draw.js';
import { mark, markOf } from './marks.js';
import { blocks } from './segments.js';
import { sourceSwitch } from './source.js';

/** @param {string} id */
export const number = id => id.replace(/[^A-Za-z0-9]/g, '').slice(-6).toUpperCase();

/** @type {Record<string, string>} */
const ends = { repaired: 'Repaired', watch: 'To be watched', book: 'Another visit', 'other-unit': 'Another unit' };

/**
 * @param {HTMLElement} element
 * @param {Told.Case} view
 */
export function drawBoxes(element, view) {
  /** @type {(name: string, content: string | Node | undefined) => HTMLElement} */
  const box = (name, content) => draw('div', { class: 'box' }, draw('dt', {}, name), draw('dd', {}, content ?? '—'));
  /** @type {(name: string, content: string | undefined) => HTMLElement | null} */
  const filled = (name, content) => content ? box(name, content) : null;
  const head = view.head;
  meet(view);
  several = hands.size > 0 || new Set(view.turns.map(turn => turn.by)).size > 1;
  element.replaceChildren(...[
    box('Unit', head.unit), box('Shows', head.shows), filled('At the unit', head.who), filled('Unit is', head.stands),
    box('Opened', day(view.openedAt)), filled('Ended', ends[head.ended ?? ''] ?? head.ended),
    filled('Working on it', [...hands.keys()].map(named).join('; ')),
  ].filter(shown => shown !== null));
}

/** @type {Map<string, string>} */
let hands = new Map();
let several = false;

/**
 * Who works on a sheet.
 * @param {Told.Case} view
 */
export function meet(view) {
  hands = new Map((view.hands ?? []).map(hand => [hand.name, hand.as]));
}

/**
 * A name with what its bearer was when they joined.
 * @param {string} name
 */
export const named = name => hands.has(name) ? `${name}, ${hands.get(name)}` : name;

// Names stand at the answers once more than one person has to do with the sheet.
/** @param {string} by */
const spokenBy = by => several ? draw('span', { class: 'by-whom' }, draw('span', { class: 'unseen' }, 'answered by '), named(by)) : null;

/** @param {import('./rows.js').Exchange} given */
function exchange({ turn, said, results }) {
  return draw('div', { class: 'exchange', 'data-last': turn.last },
    draw('p', { class: 'written' }, draw('span', { class: 'unseen' }, 'Answer: '), draw('span', { class: 'pen' }, said ?? ''), spokenBy(turn.by),
      turn.away ? draw('span', { class: 'unsaved' }, 'kept here, not sent yet') : null, time(turn.at)),
    draw('div', { class: 'results' }, blocks(results)));
}

// A step to a safe state is its own heading; any other row is headed by its question.
/** @param {import('./rows.js').Row} row */
export function headingOf(row) {
  /** @param {Told.SegmentKind} kind */
  const of = kind => row.ask.filter(segment => segment.kind === kind).map(segment => segment.text).join(' ');
  return (row.question?.kind === 'access' && of('instruction')) || row.question?.text || of('question');
}

/**
 * @param {import('./rows.js').Row} row
 * @param {number} place
 * @param {Set<string>} known pages of cautions that stand in full further up
 */
export function drawRow(row, place, known) {
  const element = draw('li', { class: 'row', id: `line-${place}` });
  const step = row.question?.kind === 'access';
  const asked = row.ask.filter(segment => segment.kind !== 'question' && !(step && segment.kind === 'instruction'));
  const heading = headingOf(row);
  element.append(
    draw('div', { class: 'margin' },
      draw('span', { class: 'unseen' }, 'Line '), draw('span', { class: 'place' }, String(place)),
      mark(row.question ? markOf(row.question) : 'end')),
    draw('div', { class: 'body' },
      row.lead.length ? draw('div', { class: 'results' }, blocks(row.lead)) : null,
      blocks(asked, known),
      heading ? draw('h2', { class: 'asked' }, heading) : null,
      row.exchanges.map(exchange),
      draw('p', { class: 'written waiting', hidden: true }, draw('span', { class: 'pen' }), draw('span', { class: 'unsaved' }, 'not saved yet')),
      sourceSwitch(element, place)));
  return element;
}

// The answer that is on its way, in the row it belongs to, marked as not saved.
/**
 * @param {HTMLElement} rows
 * @param {string | null} shown
 */
export function drawWaiting(rows, shown) {
  const line = rows.lastElementChild?.querySelector('.waiting');
  if (!(line instanceof HTMLElement) || !line.firstElementChild) return;
  line.hidden = shown === null;
  line.firstElementChild.textContent = shown ?? '';
}
