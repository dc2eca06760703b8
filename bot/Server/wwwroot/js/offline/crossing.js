// Answers that cannot simply be added: somebody else went on with the case, or the server cannot check them. The person decides.
import { draw } from '../draw.js';
import { bringTurns, readCase, sendTurn } from '../post.js';
import { sameQuestion } from './turns.js';
import { newId } from './name.js';

/** @typedef {import('./away.js').Away} Away */
/** @typedef {{ turnId: string } & Said.Body} Sent */

const reasons = {
  409: 'While you had no signal, somebody else went on with this sheet.',
  410: 'The server no longer keeps the pages that your answers were worked out on.',
  422: 'The server works your answers out differently, so it did not take them as they are.',
};

/**
 * @param {{ request: Sent }} turn
 * @param {Told.Question} open
 */
function request({ request }, open) {
  if (!('answer' in request)) return { ...request, question: open.id };
  return 'command' in request.answer ? request : { ...request, answer: { ...request.answer, question: open.id } };
}

// An answer is written below only where the very question it was given to is open; the others are handed back.
/** @param {Away} away */
async function below(away) {
  const turns = (await away.known())?.turns ?? [];
  let view = await readCase(away.id);
  /** @type {string[]} */
  const left = [];
  for (const [i, turn] of turns.entries()) {
    if (!turn.away || !turn.request || view.turns.some(there => there.turnId === turn.turnId)) continue;
    const open = view.turns.at(-1)?.reply.question;
    if (!open || left.length > 0 || !sameQuestion(turns[i - 1].reply.question, open)) {
      left.push(turn.said ?? '');
      continue;
    }
    await sendTurn(away.id, request({ request: turn.request }, open));
    view = await readCase(away.id);
  }
  await away.yield(view, left);
  return view;
}

/** @param {Away} away */
async function ownSheet(away) {
  const id = newId();
  await bringTurns(id, 0, await away.whole());
  await away.yield(await readCase(away.id));
  location.assign(`/case/${id}`);
}

/** @param {Away} away */
async function leaveOut(away) {
  const view = await readCase(away.id);
  await away.yield(view);
  return view;
}

/**
 * @param {string} title
 * @param {Told.Turn[]} turns
 */
const said = (title, turns) => turns.length === 0 ? null : draw('div', {},
  draw('p', { class: 'label' }, title), draw('ul', {}, turns.filter(turn => turn.said).map(turn => draw('li', {}, turn.said, draw('span', { class: 'by-whom' }, turn.by)))));

/**
 * @param {Away} away
 * @param {Told.Turn[]} mine
 */
async function theirs(away, mine) {
  try {
    const view = await readCase(away.id);
    return view.turns.filter(turn => turn.before >= mine[0].before && !mine.some(own => own.turnId === turn.turnId));
  } catch { return []; }
}

/**
 * The box in which the person decides.
 * @param {Away} away
 * @param {(view: Told.Case) => void} onSettled gets the case as the server has it then
 */
export async function crossing(away, onSettled) {
  const mine = await away.answers();
  const state = draw('p', { role: 'status' });
  /** @param {(away: Away) => Promise<Told.Case | void>} how */
  const attempt = how => async () => {
    state.textContent = 'One moment…';
    try {
      const view = await how(away);
      if (view) onSettled(view);
    } catch (problem) {
      state.textContent = `That did not work: ${problem instanceof Error ? problem.message : problem} Your answers are still here.`;
    }
  };
  const sure = draw('button', { type: 'button', class: 'command', hidden: true, onclick: attempt(leaveOut) }, 'Yes, leave my answers out for good');
  return draw('div', { class: 'crossing', role: 'group', 'aria-label': 'Two courses of one sheet' },
    draw('p', { class: 'crossing-why' }, `${reasons[away.crossed ?? 409]} What is to become of your answers?`),
    said('Yours', mine), said('Theirs', away.crossed === 409 ? await theirs(away, mine) : []),
    draw('button', { type: 'button', class: 'main', onclick: attempt(below) }, 'Write mine below, as far as they fit'),
    draw('button', { type: 'button', class: 'command', onclick: attempt(ownSheet) }, 'Put mine on a sheet of their own'),
    draw('button', { type: 'button', class: 'command', onclick: () => { sure.hidden = false; sure.focus(); } }, 'Leave mine out'), sure, state);
}
