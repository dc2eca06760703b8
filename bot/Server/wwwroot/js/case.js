// One case: reads it, shows it, sends answers, and keeps up with other windows.
import { at, within } from './draw.js';
import { keepPages } from './offline/install.js';
import { Link } from './offline/link.js';
import { Outbox } from './outbox.js';
import { Refused } from './post.js';
import { cautionsOf, rowsOf } from './rows.js';
import { drawBoxes, drawRow, drawWaiting, headingOf, named, number } from './sheet.js';
import { Draft } from './draft.js';
import { News } from './news.js';
import { aloud, stop } from './speech.js';
import { drawSlip, setBusy } from './slip.js';
import { speak } from './voice.js';

const slip = at('slip');
const rows = at('rows');
// There from `begin` on; nothing is drawn or sent before.
/** @type {Told.Case} */
let view;
/** @type {Outbox} */
let outbox;
/** @type {Draft} */
let draft;
/** @type {BroadcastChannel | null} */
let channel = null;
/** @type {News | null} */
let news = null;
const link = new Link(at('signal'), now => {
  brought(now);
  channel?.postMessage(now.last);
});

const last = () => view.turns[view.turns.length - 1];
// What is kept for work without signal is fetched once the page has settled.
const quiet = 8_000;
const calm = matchMedia('(prefers-reduced-motion: reduce)');

/** @param {string} line */
function say(line) {
  at('slip-state').textContent = line;
}

/** @param {string} line */
function trouble(line) {
  at('trouble').textContent = line;
  at('trouble').hidden = false;
}

function show() {
  drawBoxes(at('boxes'), view);
  const drawn = rowsOf(view.turns);
  const known = new Set();
  const wasInRows = rows.contains(document.activeElement);
  rows.replaceChildren(...drawn.map((row, i) => drawRow(row, i + 1, known)));
  const open = drawn[drawn.length - 1];
  drawSlip(slip, {
    question: open.question, heading: headingOf(open), lines: last().reply.belief, place: drawn.length, send, complain: say,
    cautions: cautionsOf(open.ask).length,
  });
  if (wasInRows) at('slip-question').focus({ preventScroll: true });
  const unsent = draft.put(open.question?.id ?? null);
  if (unsent) say(`Not sent, because the question was answered meanwhile: ${unsent}`);
  const waiting = outbox.waiting;
  drawWaiting(rows, waiting?.shown ?? null);
  setBusy(slip, waiting !== null);
}

// The newest lines go to the top of what can be seen: first what came of the answer, then the next step below it.
function toNewest() {
  const written = rows.querySelectorAll('.exchange');
  const newest = written.length > 0 ? written[written.length - 1] : rows.lastElementChild;
  newest?.scrollIntoView({ block: 'start', behavior: calm.matches ? 'auto' : 'smooth' });
}

/**
 * @param {Said.Body} body
 * @param {string} shown
 */
function send(body, shown) {
  if (outbox.waiting) {
    say('The last answer is still being saved.');
    return;
  }
  stop();
  outbox.put(body, shown);
  drawWaiting(rows, shown);
  setBusy(slip, true);
  say('Saving…');
}

/** @param {Told.Taken} answer */
async function taken(answer) {
  const { turn, last: now, head } = answer;
  const known = view.last;
  draft.drop();
  at('words', HTMLInputElement).value = '';
  if (turn.before !== known || now !== turn.last) view = await link.current();
  else view = { ...view, head, last: now, turns: [...view.turns, turn] };
  link.taken(answer, view);
  show();
  speak(turn.reply.segments);
  const faster = others(known, turn);
  if (faster) say(`${faster} answered first. Both answers are on the sheet; the question is the one that is open now.`);
  hear(turn);
  slip.classList.remove('folded');
  at('slip-question').focus({ preventScroll: true });
  toNewest();
  channel?.postMessage(view.last);
}

// Who came in between what this page knew and its own turn.
/**
 * @param {number} known
 * @param {Told.Turn} turn
 */
const others = (known, turn) => [...new Set(view.turns
  .filter(there => there.last > known && there.last <= turn.before && there.turnId !== turn.turnId).map(there => named(there.by)))].join(', ');

// Read aloud where that is switched on; what is heard after it waits in the field to be written.
/** @param {Told.Turn} turn */
async function hear(turn) {
  const heard = await aloud(turn.reply);
  if (heard && last() === turn) at('words', HTMLInputElement).value = heard;
}

/**
 * @param {string} line
 * @param {import('./outbox.js').Waiting} waiting
 */
function refused(line, waiting) {
  drawWaiting(rows, null);
  setBusy(slip, false);
  if ('text' in waiting.turn && at('words', HTMLInputElement).value === '') at('words', HTMLInputElement).value = waiting.turn.text;
  say(line);
}

/**
 * @param {string} line
 * @param {number} seconds
 */
function waitingAgain(line, seconds) {
  setBusy(slip, true);
  say(`${line} Your answer is kept here and is sent again in ${seconds} s.`);
}

async function catchUp() {
  if (!view || outbox.waiting) return;
  try {
    const now = await link.current();
    if (outbox.waiting || now.last < view.last) return;
    if (now.last === view.last && now.turns.every((turn, i) => turn.away === view.turns[i].away)) return;
    const told = changes(view, now);
    if (told === null) view = { ...view, last: now.last };
    else {
      brought(now);
      if (told) speak([{ kind: 'notice', text: told }]);
    }
  } catch { /* shown when the next answer is sent */ }
}

// What is read out of a change; null when there is nothing of it to see on the sheet.
/**
 * @param {Told.Case} was
 * @param {Told.Case} now
 */
function changes(was, now) {
  const joined = (now.hands ?? []).filter(hand => !(was.hands ?? []).some(known => known.name === hand.name));
  if (now.turns.length > was.turns.length) return `${now.turns[now.turns.length - 1].by} answered: ${now.turns[now.turns.length - 1].said}`;
  if (joined.length > 0) return `${joined.map(hand => `${hand.name}, ${hand.as}`).join('; ')} works on this sheet too.`;
  return (now.hands ?? []).length < (was.hands ?? []).length || now.head.ended !== was.head.ended || now.last === was.last ? '' : null;
}

// What waited here is with the server now, or somebody else was faster.
/** @param {Told.Case} now */
function brought(now) {
  view = now;
  show();
  news?.listen();
}

async function begin() {
  const id = location.pathname.match(/^\/case\/([^/]+)/)?.[1];
  try {
    view = await link.open(id && decodeURIComponent(id));
  } catch (problem) {
    trouble(problem instanceof Refused ? problem.message : 'No connection to the server. Load the page again when it is there.');
    return;
  }
  history.replaceState(null, '', `/case/${encodeURIComponent(view.id)}`);
  document.title = `Job sheet ${number(view.id)}`;
  at('number').textContent = `No. ${number(view.id)}`;
  at('summary', HTMLAnchorElement).href = `/case/${encodeURIComponent(view.id)}/sheet`;
  at('summary').hidden = false;
  at('unit', HTMLAnchorElement).href = `/case/${encodeURIComponent(view.id)}/job`;
  at('unit').hidden = false;
  at('call', HTMLAnchorElement).href = `/case/${encodeURIComponent(view.id)}/call`;
  at('call').hidden = false;
  at('hand', HTMLAnchorElement).href = `/case/${encodeURIComponent(view.id)}/job#hand-title`;
  at('hand').hidden = false;
  outbox = new Outbox(view.id, { deliver: turn => link.deliver(turn), onWaiting: waitingAgain, onTaken: taken, onRefused: refused });
  draft = new Draft(view.id, slip);
  show();
  if (view.turns.length > 1) toNewest();
  outbox.flush();
  if ('BroadcastChannel' in window) {
    channel = new BroadcastChannel(`case ${view.id}`);
    channel.addEventListener('message', catchUp);
  }
  document.addEventListener('visibilitychange', () => { if (!document.hidden) catchUp(); });
  news = new News(view.id, last => { if (last > view.last) catchUp(); });
  document.body.dataset.ready = 'yes';
  keepPages(!id);
  if (id) link.prepare();
  else setTimeout(() => link.prepare(), quiet);
}

// The second half of a double tap would answer the question that has just taken the place of the first.
slip.addEventListener('click', event => {
  if (event.detail > 1 && within(event, '.option, .command, .main')) {
    event.stopPropagation();
    event.preventDefault();
  }
}, true);

// What is behind the slip can always be scrolled clear of it.
new ResizeObserver(() => {
  document.documentElement.style.setProperty('--slip-height', `${slip.offsetHeight}px`);
}).observe(slip);

begin();
