// Short forms: fields with their labels, and one place in which a form says what is wrong.
import { draw } from '../draw.js';

/** @type {(label: string, properties: Record<string, unknown>, ...after: HTMLElement[]) => HTMLLabelElement} */
export const field = (label, properties, ...after) => draw('label', {}, label, draw('input', { autocomplete: 'off', maxlength: 200, ...properties }), after);

/** @type {(label: string, name: string, options: string[][], chosen?: string) => HTMLLabelElement} */
export const choice = (label, name, options, chosen) => draw('label', {}, label, draw('select', { name },
  options.map(([value, text]) => draw('option', { value, selected: value === chosen }, text))));

/** @typedef {(what: object) => Promise<import('../post.js').Refused | null>} Save */

/**
 * A form whose fields become one thing to save. A refusal is said under it, and nothing typed is lost.
 * @param {Record<string, unknown>} properties
 * @param {HTMLElement[]} fields
 * @param {string} button
 * @param {(filled: Record<string, string | null>) => object} told
 * @param {Save} save
 */
export function shortForm(properties, fields, button, told, save) {
  const wrong = draw('p', { class: 'wrong', role: 'alert' });
  const form = draw('form', properties, fields, wrong, draw('div', { class: 'acts' }, draw('button', { type: 'submit', class: 'main' }, button)));
  form.addEventListener('submit', async event => {
    event.preventDefault();
    const filled = Object.fromEntries([...new FormData(form)].map(([name, value]) => [name, String(value).trim() || null]));
    const refused = await save(told(filled));
    wrong.replaceChildren(refused?.message ?? '');
  });
  return form;
}

/**
 * A form that opens on a button.
 * @param {string} label
 * @param {HTMLFormElement} form
 */
export function behind(label, form) {
  const button = draw('button', { type: 'button', 'aria-expanded': 'false', onclick: () => {
    form.hidden = !form.hidden;
    button.setAttribute('aria-expanded', String(!form.hidden));
    if (!form.hidden) /** @type {HTMLElement | null} */ (form.querySelector('input, select, textarea'))?.focus();
  } }, label);
  form.hidden = true;
  return [draw('div', { class: 'acts' }, button), form];
}
