// The sheet of a claim: its proof, what is paid, what happened to it, and what can be done now.
import { happened, states } from './claim-words.js';
import { at, day, draw, time } from './draw.js';
import { held } from './held.js';
import { actOnClaim, readClaim, Refused } from './post.js';
import { number } from './sheet.js';
import { twice } from './twice.js';
import { stamp } from './verdict.js';

const id = decodeURIComponent(location.pathname.match(/^\/claim\/([^/]+)/)?.[1] ?? '');
/** @type {(name: string, ...content: any[]) => HTMLElement[]} */
const line = (name, ...content) => [draw('dt', {}, name), draw('dd', {}, ...content)];
/** @param {number} share */
const percent = share => `${(Math.floor(share * 1000) / 10).toLocaleString([], { maximumFractionDigits: 1 })} %`;
const blank = '—';
/** @type {Told.Claim} */
let claim;

function facts() {
  const { sheet, unit } = claim;
  return draw('dl', { class: 'facts head' },
    line('Stands', states[claim.state]),
    line('Unit', [sheet?.seriesTitle, unit.model].filter(Boolean).join(', ') || blank),
    line('Serial', unit.serial ?? blank), line('Site', unit.site ?? blank),
    line('Installed', unit.installed ?? blank), line('Bought', unit.bought ?? blank), line('Registered', unit.registered ?? blank),
    sheet ? [line('Reported', sheet.failed), found(sheet),
      line('Repair', sheet.repairTitle ?? blank, sheet.works ? ': the unit works' : ': not tried out yet'),
      line(sheet.leftPossible ? 'Belief in the likeliest' : 'Belief in the fault', `${percent(sheet.belief)} by the evidence before the part was changed; ${percent(sheet.needed)} is wanted`)] : []);
}

/** @param {Told.ClaimSheet} sheet */
const found = ({ leftPossible: left, faultTitle, part }) => left
  ? [line('Fault', draw('strong', {}, 'No fault was proven.')), line('Left possible', left.map(fault => draw('span', { class: 'cell-line' }, `${fault.title}, ${percent(fault.belief)}`))), line('Part in question', part)]
  : [line('Fault', faultTitle), line('Part claimed', part)];

/** @param {string[]} texts */
const lines = texts => texts.map(text => draw('span', { class: 'cell-line' }, text));

/** @param {Told.Evidence} seen */
function row(seen) {
  return draw('tr', { class: seen.demanded ? 'demanded' : '' },
    draw('th', { scope: 'row' }, seen.title, seen.demanded ? draw('span', { class: 'demand' }, 'demanded') : null),
    draw('td', { 'data-name': 'Read or seen' }, seen.readings.length ? lines(seen.readings.map(r => `${r.label} ${r.value}`.trim())) : seen.answer),
    draw('td', { 'data-name': 'Expected', class: seen.expected.length ? '' : 'blank' }, seen.expected.length ? lines(seen.expected) : blank),
    draw('td', { 'data-name': 'Verdict', class: seen.verdict ? '' : 'blank' }, seen.verdict ? stamp({ verdict: seen.verdict, healthy: seen.healthy }) : blank),
    draw('td', { 'data-name': 'Time' }, time(seen.at)));
}

/** @param {Told.ClaimSheet} sheet */
function proof(sheet) {
  return [draw('h2', {}, sheet.leftPossible ? 'What was measured' : 'Proof'),
    draw('p', {}, draw('strong', {}, sheet.leftPossible ? `The page of “${sheet.faultTitle}” wants: ` : 'The page of the fault wants: '), sheet.wants),
    sheet.evidence.length ? draw('table', {},
      draw('thead', {}, draw('tr', {}, ['Check', 'Read or seen', 'Expected', 'Verdict', 'Time'].map(name => draw('th', { scope: 'col' }, name)))),
      draw('tbody', {}, sheet.evidence.map(row))) : draw('p', {}, 'No check has a result.')];
}

/** @param {Told.ClaimSheet} sheet */
function paid({ coverage }) {
  return [draw('h2', {}, 'What the terms pay'),
    draw('dl', { class: 'facts' }, line('Part', coverage.part), line('Work', coverage.labour, coverage.labourMinutes ? `: ${coverage.labourMinutes} minutes` : '')),
    draw('ul', {}, coverage.reasons.map(reason => draw('li', {},
      `${reason.kind[0].toUpperCase()}${reason.kind.slice(1)}`, reason.months === undefined ? '' : ` (${reason.months} months, to ${reason.until})`,
      `: ${reason.on} `, draw('span', { class: 'page' }, reason.page)))),
    draw('p', { class: 'page' }, 'The terms are read out by the program. A person decides.')];
}

/** @param {Told.ClaimSheet} sheet */
function photos({ photos: taken }) {
  if (!taken?.length) return null;
  return [draw('h2', {}, 'Photos'), draw('ul', { class: 'photo-list' }, taken.map(photo => draw('li', {},
    `${photo.shows[0].toUpperCase()}${photo.shows.slice(1)}, serial ${photo.serial ?? blank}, `, day(photo.at), draw('span', { class: 'page' }, ` SHA-256 ${photo.hash}`))))];
}

/** @param {Told.ClaimAct} event */
const why = event => event.override ?? event.why;

function course() {
  return [draw('h2', {}, 'Course'), draw('ol', { class: 'course' }, claim.log.map(entry => draw('li', {},
    draw('strong', {}, happened[entry.event.claim]), ` by ${entry.by}, `, day(entry.at), why(entry.event) ? `: ${why(entry.event)}` : '')))];
}

function article() {
  const { sheet } = claim;
  /** @type {any[]} */
  const made = [facts(), sheet ? [proof(sheet), photos(sheet), paid(sheet)] : null,
    claim.override ? draw('p', { class: 'override' }, draw('strong', {}, 'Made ready although something was missing: '), claim.override) : null,
    claim.wanting.length && claim.state !== 'approved' ? [draw('h2', {}, 'Missing'), draw('ul', { class: 'wanting' }, claim.wanting.map(text => draw('li', {}, text)))] : null,
    course(),
    claim.line ? [draw('h2', {}, 'Verify'), draw('p', { class: 'verify' }, claim.line),
      draw('p', { class: 'page' }, 'Checked with: claims verify "this line". It replays the logs and says what this sheet must show.')] : null,
    draw('p', { class: 'signed' }, draw('span', {}, 'Name'), draw('span', {}, 'Date'), draw('span', {}, 'Signature'))];
  return made.flat(Infinity).filter(Boolean);
}

/**
 * @param {string} name
 * @param {object} [more]
 */
async function act(name, more = {}) {
  at('hindered').replaceChildren();
  try {
    show(await actOnClaim(id, { act: name, after: claim.log.length, ...more }));
  } catch (problem) {
    hinder(problem);
  }
}

/** @param {unknown} problem */
function hinder(problem) {
  const missing = problem instanceof Refused ? problem.missing : [];
  at('hindered').replaceChildren(draw('p', {}, problem instanceof Refused ? problem.message : 'No connection to the server: nothing was changed.'),
    ...(missing.length ? [draw('ul', {}, missing.map(text => draw('li', {}, text)))] : []));
}

/** @type {(name: string, label: string, type: string, value: string | undefined) => HTMLElement} */
const field = (name, label, type, value) => draw('label', {}, label, draw('input', { name, type, value: value ?? '', maxlength: 200, autocomplete: 'off' }));

function unitForm() {
  const { unit } = claim;
  const form = draw('form', { class: 'unit' },
    field('model', 'Model', 'text', unit.model), field('serial', 'Serial number', 'text', unit.serial), field('site', 'Site', 'text', unit.site),
    field('installed', 'Installed on', 'date', unit.installed), field('bought', 'Bought on', 'date', unit.bought), field('registered', 'Registered on', 'date', unit.registered),
    draw('button', { type: 'submit' }, 'Write the unit down'));
  form.addEventListener('submit', event => {
    event.preventDefault();
    act('unit', { unit: Object.fromEntries([...new FormData(form)].filter(([, value]) => value !== '')) });
  });
  return form;
}

/**
 * @param {string} text
 * @param {() => void} pressed
 */
const button = (text, pressed) => twice(draw('button', { type: 'button' }, text), `Yes, ${text.toLowerCase()}`, pressed);
/** @param {string} label */
const reason = label => draw('label', { class: 'reason' }, label, draw('textarea', { id: 'why', rows: 2, maxlength: 1000 }));
const said = () => ({ why: document.querySelector('textarea')?.value || undefined });

/** @returns {HTMLElement[]} */
function acts() {
  if (claim.state === 'submitted') return [draw('h2', {}, 'Decide'), reason('Reason (needed to decline or return)'),
    draw('div', { class: 'buttons' }, button('Approve', () => act('approve', said())), button('Return', () => act('return', said())), button('Decline', () => act('decline', said())))];
  if (claim.state === 'ready') return [draw('h2', {}, 'Hand in'), draw('div', { class: 'buttons' }, button('Submit', () => act('submit')))];
  if (claim.state === 'draft' || claim.state === 'returned') return [draw('h2', {}, 'Unit'), unitForm(), draw('h2', {}, 'Make ready'),
    ...(claim.wanting.length ? [reason('Reason to make it ready although something is missing')] : []),
    draw('div', { class: 'buttons' }, button('Make ready', () => act('ready', said())))];
  return [];
}

/** @param {Told.Claim} read */
function show(read) {
  const back = held();
  claim = read;
  at('number').textContent = claim.id;
  document.title = `Claim ${claim.id}`;
  at('case', HTMLAnchorElement).href = `/case/${encodeURIComponent(claim.case)}`;
  at('case').textContent = `Its sheet, No. ${number(claim.case)}`;
  at('article').replaceChildren(...article());
  at('acts').replaceChildren(...acts());
  at('trouble').textContent = '';
  back();
}

async function begin() {
  try {
    show(await readClaim(id));
  } catch (problem) {
    at('trouble').textContent = problem instanceof Refused ? problem.message : 'No connection to the server. Load the page again when it is there.';
  }
  document.body.dataset.ready = 'yes';
}

at('print').addEventListener('click', () => print());
begin();
