// The slip: the one open question and every way to answer it.
import { belief } from './belief.js';
import { commands } from './commands.js';
import { draw, within } from './draw.js';
import { mark } from './marks.js';
import { hidden } from './picture.js';
import { readingsForm } from './readings.js';
import { canListen, listen } from './speech.js';

/** @typedef {(body: Said.Body, shown: string) => void} Send */

/**
 * @param {Told.Question} question
 * @param {Send} send
 */
function options(question, send) {
  if (question.options.length === 0) return null;
  const short = question.options.length > 1 && question.options.every(option => option.label.length <= 14);
  const list = draw('ul', { class: `options ${short ? 'short' : ''}`, 'aria-label': 'Answers' }, question.options.map(option =>
    draw('li', {}, draw('button', {
      type: 'button', class: option.picture ? 'option drawn' : 'option', 'data-key': option.key,
      onclick: () => send({ answer: { question: question.id, choice: option.key } }, option.label),
    }, option.picture ? hidden(option.picture) : null, draw('span', {}, option.label)))));
  return question.fields.length === 0 ? list : draw('details', { class: 'instead' }, draw('summary', {}, 'Or tap what you saw'), list);
}

// What is heard goes into the field, to be read before it is written.
/**
 * @param {HTMLInputElement} input
 * @param {(line: string) => void} complain
 */
function dictation(input, complain) {
  if (!canListen) return null;
  return draw('button', { type: 'button', class: 'command dictate', 'aria-label': 'Dictate', title: 'Dictate', onclick: async () => {
    complain('Listening…');
    const heard = await listen();
    complain(heard ? '' : 'Nothing was heard.');
    if (heard) input.value = heard;
    input.focus();
  } }, mark('listen'));
}

/**
 * @param {Told.Question | null} question
 * @param {Send} send
 * @param {(line: string) => void} complain
 */
function ownWords(question, send, complain) {
  const input = draw('input', { id: 'words', name: 'words', autocomplete: 'off', enterkeyhint: 'send', placeholder: 'Code, reading, words' });
  const form = draw('form', { class: 'own-words' },
    draw('label', { for: 'words' }, 'In your own words'), input, dictation(input, complain), draw('button', { type: 'submit', class: 'command' }, 'Write'));
  form.addEventListener('submit', event => {
    event.preventDefault();
    const text = input.value.trim();
    if (text === '') {
      complain('Nothing is written yet. Type a code, a reading, or what is wrong.');
      input.focus();
    } else if (text.length > 4000) {
      complain(`That is too long: ${text.length} characters. At most 4000 go into one message; nothing was sent.`);
      input.focus();
    } else {
      send({ text, question: question?.id }, text);
    }
  });
  return form;
}

/** @returns {HTMLInputElement | null} */
const fieldOf = (/** @type {HTMLElement} */ element) => element.querySelector('#words');
/** @returns {HTMLDetailsElement | null} */
const barsOf = (/** @type {HTMLElement} */ element) => element.querySelector('.belief');

// What is wanted of a closed case next.
const summary = () => draw('a', { class: 'option whole', href: `${location.pathname}/sheet` }, 'Print or share the summary');

// Cautions belong before the step: the slip counts them and leads up to them.
/** @param {number} count */
function cautionsAbove(count) {
  if (count === 0) return null;
  const go = () => {
    /** @type {HTMLElement | null} */
    const first = document.querySelector('.row:last-child .flag.caution');
    first?.scrollIntoView({ block: 'start' });
    first?.setAttribute('tabindex', '-1');
    first?.focus({ preventScroll: true });
  };
  return draw('button', { type: 'button', class: 'cautions-above', onclick: go },
    mark('caution'), draw('span', {}, count === 1 ? '1 caution above: read it first' : `${count} cautions above: read them first`));
}

/**
 * @param {HTMLElement} element
 * @param {{ question: Told.Question | null, heading: string, lines: Told.Belief[], cautions: number, place: number, send: Send, complain: (line: string) => void }} told
 */
export function drawSlip(element, { question, heading, lines, cautions, place, send, complain }) {
  const written = fieldOf(element)?.value ?? '';
  const opened = barsOf(element)?.open ?? false;
  const held = element.contains(document.activeElement) ? document.activeElement : null;
  element.replaceChildren(
    draw('div', { class: 'slip-head' },
      draw('p', { class: 'label' }, `Line ${place}`),
      draw('button', { type: 'button', class: 'quiet', id: 'fold', 'aria-expanded': 'true', 'aria-controls': 'slip-body' }, 'Fold away')),
    draw('h2', { class: 'slip-question', id: 'slip-question', tabindex: '-1' }, heading || 'This sheet is complete.'),
    draw('div', { id: 'slip-body' },
      cautionsAbove(cautions),
      question && question.fields.length > 0 ? readingsForm(question, send, complain) : null,
      !question || question.kind === 'closed' ? summary() : null,
      question ? options(question, send) : null,
      ownWords(question, send, complain),
      commands(question, send),
      belief(lines, send)),
    draw('p', { class: 'slip-state', id: 'slip-state', role: 'status' }));
  element.dataset.kind = question?.kind ?? 'closed';
  const [field, bars] = [fieldOf(element), barsOf(element)];
  if (field) field.value = written;
  if (bars) bars.open = opened;
  if (held) holdFocus(element, held.id);
  element.querySelector('#fold')?.addEventListener('click', event => fold(element, within(event, '#fold')));
  if (!element.hidden) element.scrollTop = 0;
  element.hidden = false;
}

// Where somebody else answered, the focus stays in the field it was in, else goes to the question.
/**
 * @param {HTMLElement} element
 * @param {string} id
 */
function holdFocus(element, id) {
  /** @type {HTMLElement | null} */
  const again = element.querySelector(`#${CSS.escape(id || 'slip-question')}`) ?? element.querySelector('#slip-question');
  again?.focus({ preventScroll: true });
}

/**
 * @param {HTMLElement} element
 * @param {HTMLElement | null} button
 */
function fold(element, button) {
  const folded = element.classList.toggle('folded');
  if (!button) return;
  button.textContent = folded ? 'Open' : 'Fold away';
  button.setAttribute('aria-expanded', String(!folded));
}

// While an answer is on its way nothing else can be sent; focus stays where it is.
/**
 * @param {HTMLElement} element
 * @param {boolean} busy
 */
export function setBusy(element, busy) {
  element.classList.toggle('busy', busy);
  element.setAttribute('aria-busy', String(busy));
  for (const button of element.querySelectorAll('button.option, button.command, button.main')) {
    if (busy) button.setAttribute('aria-disabled', 'true');
    else button.removeAttribute('aria-disabled');
  }
}
