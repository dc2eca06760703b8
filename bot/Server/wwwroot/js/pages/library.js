// All pages, and those in hand on this device.
import { at, day, draw } from '../draw.js';
import { readSession } from '../post.js';
import { belongTo, inHand, pathsInHand } from './hand.js';
import { drawList } from './list.js';
import { listPages } from './requests.js';

const address = path => `/pages/write/${path.split('/').map(encodeURIComponent).join('/')}`;
let pages = [];

function showHand() {
  const paths = pathsInHand();
  at('hand').replaceChildren(...paths.map(path => draw('li', {},
    draw('a', { href: address(path) }, draw('span', { class: 'page-title' }, pages.find(page => page.path === path)?.title ?? path),
      draw('span', { class: 'page-path' }, `${path}, ${inHand(path).gone ? 'to be taken out' : 'last written'} `, day(inHand(path).at))))));
  at('hand-state').textContent = paths.length ? 'They go on together when you hand in.' : 'Nothing. Choose a page below and write in it.';
}

function show() {
  drawList(at('paths'), { pages, words: at('find', HTMLInputElement).value, entry: page => draw('a', { href: address(page.path) }) });
}

at('find').addEventListener('input', show);
at('new').addEventListener('submit', event => {
  event.preventDefault();
  const path = at('path', HTMLInputElement).value.trim();
  at('trouble').textContent = !/^[a-z0-9-]+\/[a-z0-9][a-z0-9-]*(\.[a-z]{2,3})?\.md$/.test(path)
    ? 'Write folder/id.md, small letters, digits and hyphens, for example faults/drain-hose-blocked.md.'
    : pages.some(page => page.path === path) ? 'That page is there already: choose it from the list.' : '';
  if (!at('trouble').textContent) location.assign(address(path));
});

try {
  try { belongTo((await readSession()).name); } catch { /* offline: those of the last name are not shown */ }
  ({ pages } = await listPages());
  show();
  at('state').textContent = `${pages.length} pages`;
} catch (problem) {
  at('state').textContent = problem.status ? problem.message : 'No connection to the server.';
}
showHand();
document.body.dataset.ready = 'yes';
