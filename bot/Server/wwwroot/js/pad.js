// Keys for readings under the thumb: figures, minus, OL and the units that fit, so that no keyboard covers the page.
import { draw } from './draw.js';

const families = [
  ['Ω', 'kΩ', 'MΩ'], ['mV', 'V'], ['µA', 'mA', 'A'], ['°F', '°C'], ['psig', 'kPa(g)', 'bar(g)'], ['nF', 'µF'], ['Hz', 'kHz'],
];
const open = 'OL';

/**
 * The units that a reading may be typed in, its own among them.
 * @param {string | undefined} unit
 */
export const unitsFor = unit => families.find(family => family.includes(unit ?? '')) ?? (unit ? [unit] : []);

/**
 * A reading as its figures and its unit.
 * @param {string} text
 */
export function parts(text) {
  const [, figures = '', unit = ''] = text.trim().match(/^(-?[\d.]*)\s*(.*)$/) ?? [];
  return unit === open ? { figures: '', unit: '', isOpen: true } : { figures, unit, isOpen: false };
}

/** @param {string} unit */
const bare = unit => unit.replace(/[°Ω\s]/g, '').toLowerCase();

/**
 * The key of the unit that a reading was typed in, also where it was typed short, such as 24C or 2.1k; its own unit where none was.
 * @param {string} text
 * @param {string | undefined} own
 */
export function unitOf(text, own) {
  const { unit } = parts(text);
  return unit === '' ? own : unitsFor(own).find(key => key === unit) ?? unitsFor(own).find(key => bare(key) === bare(unit));
}

/** @param {{ figures: string, unit: string }} parts */
const written = ({ figures, unit }) => [figures, unit].filter(Boolean).join(' ');

/**
 * What stands in the field after a key.
 * @param {string} text
 * @param {string} key
 */
export function after(text, key) {
  const { figures, unit, isOpen } = parts(text);
  if (key === open) return isOpen ? '' : open;
  if (key === 'clear') return isOpen ? '' : unit ? written({ figures, unit: '' }) : figures.slice(0, -1);
  if (key === 'minus') return written({ figures: figures.startsWith('-') ? figures.slice(1) : `-${figures}`, unit });
  if (key === '.') return figures.includes('.') ? text : written({ figures: figures === '' || figures === '-' ? `${figures}0.` : `${figures}.`, unit });
  if (/^\d$/.test(key)) return written({ figures: figures + key, unit });
  return written({ figures, unit: unit === key ? '' : key });
}

/** @type {Record<string, string[]>} */
const names = { minus: ['−', 'Minus'], clear: ['⌫', 'Take the last figure away'], '.': ['.', 'Point'], [open]: [open, 'OL, open circuit'] };

/**
 * The keys; they fill the field that was used last. Each has its unit in `data-unit`.
 * @param {HTMLInputElement[]} inputs
 * @param {() => void} onLast
 */
export function pad(inputs, onLast) {
  let target = inputs[0];
  const units = draw('div', { class: 'pad-units', role: 'group', 'aria-label': 'Unit' });
  /** @param {string} key */
  const press = key => () => {
    target.value = after(target.value, key);
    target.dispatchEvent(new Event('input', { bubbles: true }));
  };
  /** @param {string} key */
  const button = key => {
    const [shown, name] = names[key] ?? [key];
    return draw('button', { type: 'button', class: 'pad-key', 'aria-label': name && `${name}, into ${target.dataset.label || 'the field'}`, 'data-pad': key, onclick: press(key) }, shown);
  };
  const mark = () => {
    const unit = unitOf(target.value, target.dataset.unit);
    for (const key of units.querySelectorAll('button')) key.setAttribute('aria-pressed', String(key.dataset.pad === unit));
    for (const input of inputs) input.classList.toggle('pad-target', input === target);
  };
  /** @param {HTMLInputElement} input */
  const aim = input => {
    target = input;
    units.replaceChildren(...unitsFor(input.dataset.unit).map(button));
    mark();
  };
  const next = () => {
    const following = inputs[inputs.indexOf(target) + 1];
    if (following) following.focus();
    else onLast();
  };
  for (const input of inputs) {
    input.addEventListener('focus', () => aim(input));
    input.addEventListener('input', mark);
  }
  const keys = ['7', '8', '9', 'clear', '4', '5', '6', 'minus', '1', '2', '3', open, '0', '.'];
  const made = draw('div', { class: 'pad', role: 'group', 'aria-label': 'Keys for the reading' },
    draw('div', { class: 'pad-figures' }, keys.map(button), draw('button', { type: 'button', class: 'pad-key pad-next', onclick: next }, 'Next')), units);
  aim(target);
  return made;
}
