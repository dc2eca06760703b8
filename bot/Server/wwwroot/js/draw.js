// Makes elements, and finds those that are there. Text goes in as text only, so nothing that was said can become markup.

/**
 * @template {keyof HTMLElementTagNameMap} Tag
 * @param {Tag} tag
 * @param {Record<string, any>} [properties] attributes; those that begin with `on` are listeners
 * @param {...any} children texts and elements, in lists as deep as one likes; what is missing is left out
 * @returns {HTMLElementTagNameMap[Tag]}
 */
export function draw(tag, properties = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(properties)) {
    if (value === undefined || value === null || value === false) continue;
    if (name === 'class') element.className = value;
    else if (name.startsWith('on')) element.addEventListener(name.slice(2), value);
    else element.setAttribute(name, value === true ? '' : value);
  }
  element.append(...children.flat(Infinity).filter(child => child !== null && child !== undefined && child !== ''));
  return element;
}

/**
 * The element of this page that bears an id, which must be there.
 * @template {HTMLElement} [Kind=HTMLElement]
 * @param {string} id
 * @param {new () => Kind} [kind] what it must be, for what only such elements can do
 * @returns {Kind}
 */
export function at(id, kind) {
  const found = document.getElementById(id);
  if (!(found instanceof (kind ?? HTMLElement))) throw new TypeError(`no ${kind?.name ?? 'element'} bears the id ${id}`);
  return /** @type {Kind} */ (found);
}

/**
 * Whether an event came from within what a selector names: the innermost such element, or null.
 * @param {Event} event
 * @param {string} selector
 * @returns {HTMLElement | null}
 */
export const within = (event, selector) => event.target instanceof Element ? event.target.closest(selector) : null;

/** @param {string} iso */
export function time(iso) {
  const at = new Date(iso);
  return draw('time', { datetime: iso, title: at.toLocaleString() },
    at.toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' }));
}

/** @param {string} iso */
export function day(iso) {
  return draw('time', { datetime: iso },
    new Date(iso).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' }));
}
