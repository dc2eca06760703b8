// The summary of a case, for the screen and for paper.
import { at, day, draw, time } from './draw.js';
import { still } from './picture.js';
import { beginClaim, readSummary, Refused } from './post.js';
import { share, tried } from './share.js';
import { number } from './sheet.js';
import { twice } from './twice.js';
import { stamp } from './verdict.js';

/** @type {Record<string, string>} */
const ends = {
  repaired: 'Repaired and tried out', watch: 'No fault stands; to be watched', book: 'Another visit is needed', 'other-unit': 'A unit without pages here',
};

/** @type {(name: string, ...content: any[]) => HTMLElement[]} */
const line = (name, ...content) => [draw('dt', {}, name), draw('dd', {}, ...content)];

/** @param {Told.SummedCheck} check */
function read(check) {
  if (!check.figures) return check.answer;
  return check.figures.readings.map(reading =>
    draw('span', { class: 'cell-line' }, `${reading.label} ${reading.value}`.trim(), reading.odd ? ' (odd one)' : ''));
}

// A cell of a result that was tapped, not measured; on a narrow screen it takes no line.
/** @param {string} name */
const blank = name => draw('td', { 'data-name': name, class: 'blank' }, '—');

/**
 * @param {Told.SummedCheck} check
 * @param {number} place
 */
function checkRow(check, place) {
  return draw('tr', {},
    draw('th', { scope: 'row' }, `${place + 1}. ${check.title}`),
    draw('td', { 'data-name': 'Read or seen' }, read(check)),
    check.figures?.expected.length
      ? draw('td', { 'data-name': 'Expected' }, check.figures.expected.map(text => draw('span', { class: 'cell-line' }, text)))
      : blank('Expected'),
    check.figures ? draw('td', { 'data-name': 'Verdict' }, stamp(check.figures)) : blank('Verdict'),
    draw('td', { 'data-name': 'Time' }, time(check.at)));
}

/** @param {Told.Part} part */
function checks(part) {
  if (part.checks.length === 0) return draw('p', {}, 'No check has a result yet.');
  return draw('table', {},
    draw('thead', {}, draw('tr', {}, ['Check', 'Read or seen', 'Expected', 'Verdict', 'Time'].map(name => draw('th', { scope: 'col' }, name)))),
    draw('tbody', {}, part.checks.map(checkRow)));
}

/**
 * @param {Told.Picture} shown
 * @param {string} caption
 */
const figure = (shown, caption) => draw('figure', { class: `picture ${shown.kind}` }, draw('figcaption', {}, caption), still(shown));

/** @param {Told.Part} part */
function drawn(part) {
  const figures = part.checks.flatMap((check, place) => check.pictures.map(shown => figure(shown, `${place + 1}. ${check.title}`)));
  if (part.narrowing) figures.push(figure(part.narrowing, 'How the faults in question narrowed'));
  return figures.length ? [draw('h3', {}, 'Pictures'), draw('div', { class: 'figures' }, figures)] : null;
}

/** @param {Told.Made} made */
function repair(made) {
  return draw('li', {}, draw('strong', {}, made.title), `: ${tried(made)}`, made.triedAt ? [', ', time(made.triedAt)] : null);
}

/**
 * @param {Told.Part} shown
 * @param {number} place
 * @param {Told.Part[]} all
 */
function part(shown, place, all) {
  return draw('section', { class: 'part' },
    draw('h2', {}, all.length > 1 ? `Part ${place + 1}` : 'What was done'),
    draw('dl', { class: 'facts' },
      all.length > 1 ? line('Unit', shown.unit ?? '—') : [],
      line('Shows', shown.shows.join('; ') || '—'),
      shown.said.length ? line('In their words', shown.said.map(words => `“${words}”`).join(', ')) : [],
      line('Fault proven', shown.proven ?? (shown.ended ? 'None' : 'None yet')),
      shown.inQuestion.length ? line('Still in question', shown.inQuestion.join('; ')) : [],
      line('Ended', ends[shown.ended ?? ''] ?? shown.ended ?? 'Still open')),
    draw('h3', {}, 'Checks'), checks(shown), drawn(shown),
    shown.leftOut.length ? [draw('h3', {}, 'Left out'),
      draw('ul', {}, shown.leftOut.map(left => draw('li', {}, `${left.title}: ${left.reason.toLowerCase()}`)))] : null,
    draw('h3', {}, 'Repair and trial'),
    shown.repairs.length ? draw('ul', {}, shown.repairs.map(repair)) : draw('p', {}, 'No repair has been made.'));
}

/** @param {Told.Summary} summary */
function article(summary) {
  return [
    draw('dl', { class: 'facts head' },
      line('Unit', summary.head.unit ?? '—'), line('At the unit', summary.head.who ?? '—'),
      line('Opened', day(summary.openedAt)), line('Last entry', day(summary.lastAt)),
      line('Sheet', summary.id), line('Content version', summary.versions.join(', '))),
    summary.parts.map(part),
    draw('p', { class: 'signed' }, draw('span', {}, 'Name'), draw('span', {}, 'Date'), draw('span', {}, 'Signature')),
  ].flat();
}

async function begin() {
  const id = decodeURIComponent(location.pathname.match(/^\/case\/([^/]+)\/sheet/)?.[1] ?? '');
  try {
    const summary = await readSummary(id);
    at('number').textContent = `No. ${number(id)}`;
    document.title = `Summary ${number(id)}`;
    at('case', HTMLAnchorElement).href = `/case/${encodeURIComponent(id)}`;
    at('article').replaceChildren(...article(summary));
    at('trouble').textContent = '';
    at('share').addEventListener('click', async () => { at('trouble').textContent = await share(summary); });
  } catch (problem) {
    at('trouble').textContent = problem instanceof Refused ? problem.message : 'No connection to the server. Load the page again when it is there.';
  }
  document.body.dataset.ready = 'yes';
}

async function toClaim() {
  const id = decodeURIComponent(location.pathname.match(/^\/case\/([^/]+)\/sheet/)?.[1] ?? '');
  try {
    location.assign(`/claim/${(await beginClaim(id)).id}`);
  } catch (problem) {
    at('trouble').textContent = problem instanceof Refused ? [problem.message, ...problem.missing].join(' ') : 'No connection to the server. No claim was begun.';
  }
}

// A claim that was begun stays in the books.
twice(at('claim', HTMLButtonElement), 'Yes, begin a claim', toClaim);
at('print').addEventListener('click', () => print());
begin();
