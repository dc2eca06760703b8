// Segments of a reply, as blocks of a row. Runs of steps become one list.
import { draw } from './draw.js';
import { mark } from './marks.js';
import { pictures } from './picture.js';
import { cautionsOf, isLead } from './rows.js';
import { sourceNote } from './source.js';
import { verdict } from './verdict.js';

/** @type {Record<string, string[]>} */
const words = {
  refusal: ['stop', 'Stop'], notice: ['note', 'Note'], why: ['note', 'Why'],
  advice: ['note', 'Advice'],
};
/** @type {Record<string, string>} */
const lists = { instruction: 'Do', repair: 'Repair' };

const runs = new Set(['instruction', 'repair', 'caution', 'verdict', 'conclusion']);

/** @param {Told.Segment} segment */
const noted = segment => [segment.text, sourceNote(segment)];

/** @param {Told.Segment} segment */
function block(segment) {
  const [drawing, word] = words[segment.kind] ?? [];
  if (!word) return [draw('p', { class: segment.kind }, noted(segment)), ...pictures([segment])];
  return [
    draw('div', { class: `flag ${segment.kind}` },
      mark(drawing),
      draw('p', {}, draw('strong', { class: 'flag-word' }, word), ' ', noted(segment))),
    ...pictures([segment]),
  ];
}

/**
 * @param {Told.Segment[]} run
 * @param {string} kind
 */
function list(run, kind) {
  const drawn = pictures(run);
  return draw('div', { class: `steps ${kind} ${drawn.length ? 'drawn' : ''}` },
    draw('p', { class: 'label' }, lists[kind]),
    draw('ol', {}, run.map(segment => draw('li', {}, noted(segment)))),
    drawn.length ? draw('div', {}, drawn) : null);
}

// A caution that stands in full further up is shown with its danger, and with what to do on demand: the same page of
// text before every step would be read by nobody.
/**
 * @param {ReturnType<typeof cautionsOf>[number]} box
 * @param {Set<string>} known
 */
function caution({ page, segments: [danger, ...rest] }, known) {
  const todo = rest.length ? draw('ul', {}, rest.map(segment => draw('li', {}, noted(segment)))) : null;
  return draw('div', { class: 'flag caution' },
    mark('caution'),
    draw('div', {},
      draw('p', {}, draw('strong', { class: 'flag-word' }, 'Caution'), ' ', noted(danger)),
      todo && known.has(page) ? draw('details', {}, draw('summary', {}, 'What to do about it, as before'), todo) : todo));
}

/**
 * @param {Told.Segment[]} run
 * @param {Set<string>} known
 */
function cautions(run, known) {
  return cautionsOf(run).map(box => {
    const drawn = caution(box, known);
    known.add(box.page);
    return drawn;
  });
}

// A figure made from the readings, such as a superheat, stands among none of the verdict's figures.
/** @param {Told.Segment} segment */
const isMade = segment => segment.from.some(origin => origin.origin === 'phrase' && origin.id === 'verdict-figure');

// Sentences that follow a verdict say in words what its figures show; they add their sources to it.
/** @param {Told.Segment[]} run */
function verdicts(run) {
  const made = [];
  for (const segment of run) {
    if (segment.verdict) made.push(verdict(segment, segment.verdict));
    else if (made.length === 0 || isMade(segment)) made.push(draw('p', { class: 'verdict-says' }, segment.text));
    made.at(-1)?.append(sourceNote(segment));
  }
  return made;
}

// Drawings that are there for those who ask.
/**
 * @param {HTMLElement[]} drawn
 * @param {string} title
 */
const folded = (drawn, title) => drawn.length ? draw('details', { class: 'folded' }, draw('summary', {}, title), drawn) : null;

// What the walk came to, in one box between heavy rules.
/** @param {Told.Segment[]} run */
function conclusion(run) {
  return [
    draw('div', { class: 'flag conclusion' },
      mark('end'),
      draw('div', {}, run.map((segment, i) => draw('p', {},
        i === 0 ? [draw('strong', { class: 'flag-word' }, 'Result'), ' '] : null, noted(segment))))),
    folded(pictures(run), 'How it was reached'),
  ].filter(part => part !== null);
}

/** @param {Told.Segment} segment */
function lead(segment) {
  return draw('p', { class: 'lead' }, noted(segment));
}

/**
 * @param {Told.Segment[]} segments
 * @param {Set<string>} [known] pages of cautions that were shown in full already; those shown now are added
 */
export function blocks(segments, known = new Set()) {
  const made = [];
  for (let i = 0; i < segments.length;) {
    const kind = segments[i].kind;
    let end = i + 1;
    while (runs.has(kind) && end < segments.length && segments[end].kind === kind) end++;
    const run = segments.slice(i, end);
    if (kind in lists) made.push(list(run, kind));
    else if (kind === 'caution') made.push(...cautions(run, known));
    else if (kind === 'conclusion') made.push(...conclusion(run));
    else if (kind === 'verdict') made.push(...verdicts(run));
    else made.push(...[isLead(segments[i]) ? lead(segments[i]) : block(segments[i])].flat());
    i = end;
  }
  return made;
}
