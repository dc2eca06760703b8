// Pictures of a reply. They come as SVG text; what is put into the page is built anew from the parts a drawing needs.
import { draw } from './draw.js';

const space = 'http://www.w3.org/2000/svg';
const parts = new Set([
  'svg', 'title', 'desc', 'g', 'defs', 'symbol', 'use', 'marker', 'clipPath', 'pattern', 'path', 'line', 'polyline',
  'polygon', 'rect', 'circle', 'ellipse', 'text', 'tspan', 'a',
]);

/** @param {Attr} attribute */
const harmless = ({ name, value }) => !name.startsWith('on') && name !== 'style' && !name.includes(':')
  && !/javascript:/i.test(value) && (name !== 'href' || value.startsWith('#')) && !/url\((?!#)/i.test(value);

/**
 * @param {Element} element
 * @returns {SVGElement | null}
 */
function copy(element) {
  if (element.namespaceURI !== space || !parts.has(element.localName)) return null;
  const made = document.createElementNS(space, element.localName);
  for (const attribute of element.attributes) if (attribute.name !== 'xmlns' && harmless(attribute)) made.setAttribute(attribute.name, attribute.value);
  for (const child of element.childNodes) {
    const part = child instanceof Text ? child.data : child instanceof Element ? copy(child) : null;
    if (part !== null) made.append(part);
  }
  return made;
}

/**
 * The drawing alone; null when it cannot be read, and then the words beside it must do.
 * @param {Told.Picture} picture
 */
export function drawing(picture) {
  const read = new DOMParser().parseFromString(picture.svg, 'image/svg+xml').documentElement;
  const made = read.localName === 'svg' ? copy(read) : null;
  made?.classList.add('drawing');
  made?.removeAttribute('width');
  made?.removeAttribute('height');
  return made ?? null;
}

/**
 * A drawing beside words that say the same.
 * @param {Told.Picture} picture
 */
export function hidden(picture) {
  const made = drawing(picture);
  made?.setAttribute('aria-hidden', 'true');
  return made;
}

/**
 * A drawing on paper: its words are its name.
 * @param {Told.Picture} picture
 */
export function still(picture) {
  const made = drawing(picture);
  made?.setAttribute('role', 'img');
  made?.setAttribute('aria-label', picture.text);
  return made;
}

/** @param {Told.Picture} picture */
function enlarge(picture) {
  const id = location.pathname.match(/^\/case\/([^/]+)/)?.[1];
  const keep = id ? draw('a', { class: 'keep', download: true, href: `/api/cases/${id}/picture?name=${encodeURIComponent(picture.id)}` }, 'Save as a file') : null;
  const shut = draw('button', { type: 'button', class: 'main' }, 'Close');
  const dialog = draw('dialog', { class: 'large', 'aria-label': 'Picture' },
    draw('div', { class: `large-paper ${picture.kind}` }, still(picture)), draw('p', {}, picture.text), keep, shut);
  shut.addEventListener('click', () => dialog.close());
  dialog.addEventListener('click', event => { if (event.target === dialog) dialog.close(); });
  dialog.addEventListener('close', () => dialog.remove());
  document.body.append(dialog);
  dialog.showModal();
}

/**
 * A drawing in the text of the sheet; a tap shows it large.
 * @param {Told.Picture} shown
 */
export function picture(shown) {
  const made = hidden(shown);
  if (made === null) return draw('p', { class: 'picture-words' }, shown.text);
  return draw('figure', { class: `picture ${shown.kind}` },
    draw('button', { type: 'button', class: 'picture-open', onclick: () => enlarge(shown) },
      draw('span', { class: 'unseen' }, `Picture, tap to enlarge: ${shown.text}`), made));
}

/** @param {Told.Segment[]} run */
export const pictures = run => run.flatMap(segment => segment.pictures ?? []).map(picture);
