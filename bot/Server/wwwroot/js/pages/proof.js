// A page as it will be seen, with what is wrong below the line it is about.
import { draw } from '../draw.js';

/**
 * What is wrong at a place, and its mend where only one thing can be meant.
 * @param {any} found
 * @param {{ go?: (found: any) => void, mend?: (found: any) => void }} acts
 */
export function note(found, { go, mend } = {}) {
  const where = `Line ${found.line}`;
  return draw('div', { class: `wrong ${found.severity}` },
    draw('p', {}, go ? draw('button', { type: 'button', class: 'wrong-place', onclick: () => go(found) }, where) : draw('b', {}, where),
      draw('span', { class: 'wrong-kind' }, found.severity === 'error' ? ' Error. ' : ' Warning. '), found.message),
    found.help ? draw('p', { class: 'wrong-help' }, found.help) : '',
    draw('p', { class: 'page-path' }, found.rule),
    mend && found.mend ? draw('button', { type: 'button', onclick: () => mend(found) }, found.mend.text ? `Write “${found.mend.text.trim()}” instead` : 'Take it out') : '');
}

function lower(page) {
  for (const level of [5, 4, 3, 2, 1]) for (const head of page.querySelectorAll(`h${level}`)) {
    const below = page.ownerDocument.createElement(`h${level + 1}`);
    below.append(...head.childNodes);
    for (const { name, value } of head.attributes) below.setAttribute(name, value);
    head.replaceWith(below);
  }
}

// Below the row, list item or block that begins at the line or last before it.
function put(page, found, shown) {
  const block = [...page.querySelectorAll('[data-line]')].findLast(each => Number(each.dataset.line) <= found.line);
  if (!block) page.prepend(shown);
  else if (block.tagName === 'TR') block.after(draw('tr', { class: 'wrong-row' }, draw('td', { colspan: block.children.length }, shown)));
  else if (block.tagName === 'LI') block.append(shown);
  else if (block.tagName === 'DIV') block.closest('dl').after(shown);
  else block.after(shown);
}

/** Draws a page. `html` comes from the program, which lets no markup of the page through. */
export function showPage(root, html, found, pictures) {
  const page = new DOMParser().parseFromString(html, 'text/html').body;
  for (const image of page.querySelectorAll('img')) image.setAttribute('src', pictures + image.getAttribute('src').split('/').pop());
  for (const link of /** @type {NodeListOf<HTMLAnchorElement>} */ (page.querySelectorAll('a[href^="http"], a[href^="//"]'))) { link.target = '_blank'; link.rel = 'noopener noreferrer'; }
  lower(page);
  root.replaceChildren(...page.childNodes);
  for (const each of [...found].reverse()) put(root, each, note(each));
}

/** The page a link of a page leads to; null when it leads out of the pages, or nowhere. */
export function target(link, path) {
  try {
    const to = new URL(link.getAttribute('href') || '#', `http://pages/${path}`);
    return to.host === 'pages' ? decodeURIComponent(to.pathname.slice(1)) : null;
  } catch {
    return null; // half a percent sign
  }
}
