// A walk on the phone: what to read aloud, answers by single keys, notes while the caller holds, and calling back. What somebody else
// answers meanwhile is followed.
import { at, day, draw, within } from './draw.js';
import { News } from './news.js';
import { noteCall, putCallAside, readCall, readCase, Refused, sendTurn, takeCallUp, waitingCalls } from './post.js';
import { meet, named, number } from './sheet.js';
import { drawCalls } from './calls.js';

const id = decodeURIComponent(location.pathname.match(/^\/case\/([^/]+)\/call/)?.[1] ?? '');
/** @type {Record<string, string[]>} */
const orders = { back: ['b', 'Back'], skip: ['s', 'Skip'], unsure: ['u', 'Not sure'], cannot: ['c', 'Cannot do that'], why: ['w', 'Why this?'], again: ['r', 'Say it again'] };
const aloud = new Set(['notice', 'caution', 'instruction', 'conclusion', 'repair', 'advice', 'refusal', 'understood', 'verdict', 'why']);
/** @type {Told.Reply} */
let reply;
/** @type {Told.Reply | null} the one that is shown */
let drawn = null;
/** @type {Told.Slip | undefined} */
let aside;
let busy = false;
let turn = Promise.resolve();
let behind = false; // whether there was news while something else was done
let last = 0;
const mine = new Set(); // the ids of what was answered here

/** @param {string} name */
const key = name => draw('kbd', { 'aria-hidden': 'true' }, name.toUpperCase());

function drawScript() {
  const said = reply.segments.filter(segment => aloud.has(segment.kind))
    .map(segment => draw('p', { class: segment.kind === 'caution' ? 'caution' : '' }, segment.text));
  at('script').replaceChildren(...said, draw('p', { class: 'aloud' }, reply.question?.text ?? 'The walk is complete.'));
}

/** @param {Told.Question} open */
function readings({ fields, id: question }) {
  if (fields.length === 0) return [];
  const form = draw('form', {}, fields.map((field, place) => draw('label', {}, `${field.label}, ${field.unit}: ${field.where}`,
    draw('input', { 'data-label': field.label, id: `reading-${place}`, inputmode: 'decimal', maxlength: 40, autocomplete: 'off', value: field.given ?? '' }))),
  draw('button', { type: 'submit' }, 'Write down'));
  form.addEventListener('submit', event => {
    event.preventDefault();
    const filled = [...form.querySelectorAll('input')].filter(input => input.value.trim() !== '');
    if (filled.length) send({ answer: { question, readings: Object.fromEntries(filled.map(input => [input.dataset.label, input.value.trim()])) } });
  });
  return [form];
}

/** @param {Told.Question | undefined} question */
function words(question) {
  const input = draw('input', { id: 'words', maxlength: 4000, autocomplete: 'off' });
  const form = draw('form', {}, draw('label', { for: 'words' }, 'In the caller’s words ', key('/')), input);
  form.addEventListener('submit', event => {
    event.preventDefault();
    if (input.value.trim()) send({ text: input.value.trim(), question: question?.id });
  });
  return form;
}

function drawAnswers() {
  const { question } = reply;
  const fitting = Object.entries(orders).filter(([order]) => order === 'again' || (question?.commands ?? []).map(String).includes(order));
  at('answers').replaceChildren(...[
    ...(question ? readings(question) : []),
    draw('ol', {}, (question?.options ?? []).map((option, place) => draw('li', {}, draw('button', {
      type: 'button', 'data-pick': place + 1, onclick: () => send({ answer: { question: question?.id ?? '', choice: option.key } }),
    }, place < 9 ? key(String(place + 1)) : null, option.label)))),
    words(question),
    draw('div', { class: 'orders' }, fitting.map(([order, [letter, label]]) => draw('button', {
      type: 'button', 'data-order': letter, onclick: () => send({ answer: { command: order } }),
    }, key(letter), label))),
  ]);
}

// What is asked is drawn once, so that it is read aloud once and what is being typed stays.
function drawAll() {
  at('paused').replaceChildren(...(aside ? ['This call is put aside. ', draw('button', { type: 'button', onclick: takeUp }, 'Take it up (P)')] : []));
  at('answers').inert = Boolean(aside);
  if (drawn === reply) return;
  drawn = reply;
  drawScript();
  drawAnswers();
}

/** @param {{ aside?: Told.Slip, notes: { at: string, by: string, text: string }[] }} read */
async function drawCall(read) {
  aside = read.aside;
  at('notes').replaceChildren(...read.notes.map(note => draw('li', {}, day(note.at), ` ${note.by}: ${note.text}`)));
  drawCalls(at('waiting'), await waitingCalls());
  drawAll();
}

// One thing after the other; what went wrong is said, and nothing that was typed is lost.
/** @param {() => Promise<void>} work */
const doing = work => (turn = turn.then(() => run(work)));

/** @param {() => Promise<void>} work */
async function run(work) {
  busy = true;
  try {
    await work();
    at('trouble').textContent = '';
  } catch (problem) {
    at('trouble').textContent = problem instanceof Refused ? problem.message : 'No connection to the server. Nothing was saved; try again.';
  }
  busy = false;
  if (behind) await follow().catch(() => { /* the next word of a change asks again */ });
}

// What somebody else answered meanwhile; what was typed in the caller's words stays.
async function follow() {
  behind = busy;
  if (busy) return;
  const sheet = await readCase(id);
  meet(sheet);
  const { turns } = sheet;
  const newest = turns[turns.length - 1];
  if (newest.last === last) return;
  const faster = new Set(turns.filter(turn => turn.before >= last && !mine.has(turn.turnId)).map(turn => named(turn.by)));
  ({ reply, last } = newest);
  const typed = at('words', HTMLInputElement).value;
  drawAll();
  at('words', HTMLInputElement).value = typed;
  if (faster.size) at('trouble').textContent = `${[...faster].join(', ')} answered.`;
}

// An answer given while something else is done was meant for what is being replaced.
/** @param {Said.Body} answer */
const send = answer => busy ? undefined : doing(async () => {
  const turnId = crypto.randomUUID();
  mine.add(turnId);
  const { turn: taken } = await sendTurn(id, { turnId, ...answer });
  if (taken.before === last) ({ last } = taken);
  else behind = true; // somebody came in between
  ({ reply } = taken);
  drawAll();
  const first = at('answers').querySelector('form input:not(#words)');
  if (first instanceof HTMLElement) first.focus();
  else leave();
});

function leave() {
  if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
}

const takeUp = () => doing(async () => drawCall(await takeCallUp(id)));

/** @param {Event} [event] */
function putAside(event) {
  event?.preventDefault();
  /** @type {Record<string, unknown>} */
  const told = Object.fromEntries([...new FormData(at('aside-form', HTMLFormElement))].filter(([, value]) => value));
  if (told.due) told.due = new Date(String(told.due)).toISOString();
  doing(async () => drawCall(await putCallAside(id, told)));
}

at('aside-form').addEventListener('submit', putAside);
at('note-form').addEventListener('submit', event => {
  event.preventDefault();
  const text = at('note', HTMLTextAreaElement).value.trim();
  if (text) doing(async () => { await drawCall(await noteCall(id, text)); at('note', HTMLTextAreaElement).value = ''; });
});

document.addEventListener('keydown', event => {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  if (event.key === 'Escape') leave();
  if (within(event, 'input, textarea')) return;
  const letter = event.key.toLowerCase();
  const button = at('answers').querySelector(`[data-pick="${CSS.escape(letter)}"], [data-order="${CSS.escape(letter)}"]`);
  if (letter === 'p') aside ? takeUp() : putAside();
  else if (letter === 'n') at('note').focus();
  else if (letter === '/') document.getElementById('words')?.focus();
  else if (button instanceof HTMLElement && !aside) button.click();
  else return;
  event.preventDefault();
});

async function begin() {
  at('number').textContent = `No. ${number(id)}`;
  at('unit', HTMLAnchorElement).href = `/case/${encodeURIComponent(id)}/job`;
  at('case', HTMLAnchorElement).href = `/case/${encodeURIComponent(id)}`;
  await doing(async () => {
    const { turns } = await readCase(id);
    ({ reply, last } = turns[turns.length - 1]);
    await drawCall(await readCall(id));
  });
  document.body.dataset.ready = 'yes';
  if (last) new News(id, now => { if (now !== last) follow().catch(() => { /* the next word of a change asks again */ }); });
}

begin();
