// The author's proof. Everything shown comes from the program beside it; a save on disk shows at once.
import { at, draw, within } from './draw.js';
import { ask } from './post.js';
import { drawList } from './pages/list.js';
import { showPage, target } from './pages/proof.js';
import { walkPane } from './pages/walk.js';

const send = body => ({ method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body) });
const state = { all: null, ...readAddress() };

// Page and point of the walk stand in the address, so that they can be kept and sent.
function readAddress() {
  const told = new URLSearchParams(location.search);
  try {
    return { path: told.get('page') ?? 'index.md', point: JSON.parse(told.get('walk')) ?? {} };
  } catch {
    return { path: told.get('page') ?? 'index.md', point: {} };
  }
}

function remember() {
  history.replaceState(null, '', `?${new URLSearchParams({ page: state.path, walk: JSON.stringify(state.point) })}`);
}

const walk = walkPane(at('walk-pane'), {
  ask: point => ask('/api/preview/walk', send(point)),
  moved: point => { state.point = point; remember(); },
  point: state.point,
});

function open(path) {
  state.path = path;
  remember();
  showList();
  showOne();
  if (matchMedia('(max-width: 70rem)').matches) at('list', HTMLDetailsElement).open = false;
  at('page').focus();
}

function showList() {
  drawList(at('paths'), {
    pages: state.all.list, current: state.path, words: at('find', HTMLInputElement).value,
    entry: page => draw('button', { type: 'button', onclick: () => open(page.path) }),
  });
}

async function showOne() {
  const path = state.path;
  at('page-name').textContent = path;
  try {
    const { html, found } = await ask(`/api/preview/page?${new URLSearchParams({ path })}`);
    if (path === state.path) showPage(at('page'), html, found, '/pictures/');
  } catch (problem) {
    if (path === state.path) at('page').replaceChildren(draw('p', {}, problem.status === 404 ? 'This page is gone. Choose another from the list.' : problem.message));
  }
}

// A page that went in the same moment as one came beside it got another name.
function follow(before, now) {
  const folder = state.path.slice(0, state.path.lastIndexOf('/') + 1);
  const came = now.filter(path => !before.includes(path) && path.startsWith(folder));
  if (!now.includes(state.path) && before.includes(state.path) && came.length === 1) state.path = came[0];
}

async function showAll() {
  try {
    const before = state.all?.list.map(page => page.path) ?? [];
    const { path } = state;
    state.all = await ask('/api/preview/pages');
    follow(before, state.all.list.map(page => page.path));
    const { pages, errors, warnings, usesLastGood } = state.all;
    const counted = (many, word) => `${many} ${word}${many === 1 ? '' : 's'}`;
    at('state').textContent = `${counted(pages, 'page')}, ${counted(errors, 'error')}, ${counted(warnings, 'warning')}`
      + (usesLastGood ? '. The walk uses the last version without errors.' : '');
    at('state').classList.toggle('is-wrong', errors > 0);
    showList();
    if (state.path !== path) await showOne();
    walk.take(state.all.walks);
  } catch (problem) {
    at('state').textContent = problem.status ? problem.message : 'The program does not answer. What is shown may be old.';
  }
  document.body.dataset.ready = String(state.all?.number ?? 'no');
}

// Links of a page lead inside the proof.
at('page').addEventListener('click', event => {
  const link = within(event, 'a');
  const path = link && target(link, state.path);
  if (!path) return;
  event.preventDefault();
  open(path);
});
at('find').addEventListener('input', () => state.all && showList());
const changes = new EventSource('/api/preview/changes');
// The page that is read comes first, the list of all pages after it.
changes.addEventListener('pages', async () => { await showOne(); await showAll(); });
changes.addEventListener('error', () => { at('state').textContent = 'The program does not answer. What is shown may be old.'; });
