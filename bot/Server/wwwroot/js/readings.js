// A form for a set of readings: all of them at once, the unit beside each, keys for minus and open circuit.
import { draw } from './draw.js';
import { pad, parts } from './pad.js';

// Where a finger points, the keys of the page are better than a keyboard over half of it.
const thumb = matchMedia('(pointer: coarse)');

/**
 * @param {HTMLInputElement} input
 * @param {string} label
 */
function keys(input, label) {
  /** @param {string} value */
  const put = value => { input.value = value; input.dispatchEvent(new Event('input', { bubbles: true })); input.focus(); };
  const minus = () => put(input.value.startsWith('-') ? input.value.slice(1) : `-${input.value}`);
  const open = () => put('OL');
  return [
    draw('button', { type: 'button', class: 'key', 'aria-label': `Minus, ${label}`, onclick: minus }, '−'),
    draw('button', { type: 'button', class: 'key', 'aria-label': `OL, open circuit, ${label}`, onclick: open }, 'OL'),
  ];
}

/**
 * @param {Told.Field} field
 * @param {number} place
 */
function fieldRow(field, place) {
  const input = draw('input', {
    id: `reading-${place}`, class: 'reading-input', inputmode: thumb.matches ? 'none' : 'decimal', 'data-unit': field.unit, autocomplete: 'off', autocapitalize: 'off', spellcheck: 'false',
    maxlength: '40', enterkeyhint: 'next', value: field.given ?? '', 'data-label': field.label, 'aria-describedby': `where-${place}`,
  });
  const row = draw('div', { class: 'field' },
    draw('label', { for: input.id }, field.label, draw('span', { class: 'unseen' }, ` in ${field.unit}`)),
    input,
    draw('span', { class: 'unit', 'aria-hidden': 'true' }, field.unit),
    thumb.matches ? null : keys(input, field.label),
    draw('p', { class: 'where', id: `where-${place}` }, field.where));
  // A unit that was typed is the one that counts; the other would contradict it.
  const fit = () => row.classList.toggle('own-unit', parts(input.value).unit !== '');
  for (const happening of ['input', 'focus', 'blur']) input.addEventListener(happening, fit);
  return { input, row };
}

// Units or words that have no key are typed.
/** @param {HTMLInputElement[]} inputs */
function keyboard(inputs) {
  const button = draw('button', { type: 'button', class: 'quiet', 'aria-pressed': 'false', onclick: () => {
    const typed = inputs[0].inputMode === 'none';
    for (const input of inputs) input.inputMode = typed ? 'text' : 'none';
    button.setAttribute('aria-pressed', String(typed));
    (inputs.find(input => input.classList.contains('pad-target')) ?? inputs[0]).focus();
  } }, 'Keyboard');
  return button;
}

/**
 * @param {Told.Question} question
 * @param {(body: Said.Body, shown: string) => void} send
 * @param {(line: string) => void} complain
 */
export function readingsForm(question, send, complain) {
  const fields = question.fields.map(fieldRow);
  const inputs = fields.map(({ input }) => input);
  const write = draw('button', { class: 'main', type: 'submit' }, question.fields.length > 1 ? 'Write the readings down' : 'Write the reading down');
  const form = draw('form', { class: 'readings', autocomplete: 'off', novalidate: true }, fields.map(({ row }) => row),
    thumb.matches ? [pad(inputs, () => write.focus()), keyboard(inputs)] : null, write);
  form.addEventListener('submit', event => {
    event.preventDefault();
    const filled = inputs.filter(input => input.value.trim() !== '');
    if (filled.length === 0) {
      complain('No reading is filled in yet.');
      inputs[0].focus();
      return;
    }
    const readings = Object.fromEntries(filled.map(input => [input.dataset.label, input.value.trim()]));
    send({ answer: { question: question.id, readings } }, filled.map(input => `${input.dataset.label} ${input.value.trim()}`).join(', '));
  });
  return form;
}
