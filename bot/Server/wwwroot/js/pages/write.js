// Writing a page: kept on this device at each key, looked through by the server shortly after, handed in as a proposal.
import { at, draw, within } from '../draw.js';
import { keepPages } from '../offline/install.js';
import { readSession } from '../post.js';
import { twice } from '../twice.js';
import { corrections } from './corrections.js';
import { writingField } from './field.js';
import { asSent, belongTo, inHand, keep, keepNote, noteInHand, onOther, pathsInHand, putBack } from './hand.js';
import { note, showPage, target } from './proof.js';
import { changesOf, handIn, merge, playWalk, proof, readText, rename } from './requests.js';
import { walkPane } from './walk.js';

const start = '/pages/write/';
const path = plain(location.pathname.slice(start.length));
const boxes = () => [...at('pages').querySelectorAll('input')];
const address = to => start + to.split('/').map(encodeURIComponent).join('/');
const kinds = { faults: 'fault', checks: 'check', symptoms: 'symptom', repairs: 'repair', cautions: 'caution', questions: 'question', refusals: 'refusal' };
const pause = 350;
const text = at('text', HTMLTextAreaElement);
const field = writingField(text, at('lines'));
let page = { text: '', before: '', base: '', gone: false };
let isKept = true;
let proofed = null;
let walks = null;
let asked = 0;
let timer;

// An address with half a percent sign is no page's.
function plain(part) {
  try { return decodeURIComponent(part); } catch { return part; }
}

const isChanged = () => page.gone || page.text !== page.before;
const offline = problem => !problem.status;

// The other pages in hand count too: a fault and the row of its symptom are right together only.
const inMind = () => [asSent(path, page), ...pathsInHand().filter(other => other !== path).map(other => asSent(other, inHand(other)))];

const walk = walkPane(at('walk'), { ask: point => playWalk(inMind(), point) });

function say(line, wrong = false) {
  if (at('kept').textContent !== line) at('kept').textContent = line;
  at('kept').classList.toggle('flagged', wrong);
}

function keepNow() {
  if (isChanged()) isKept = keep(path, { ...page, at: new Date().toISOString() });
  else { putBack(path); isKept = true; }
  at('put-back').hidden = !isChanged();
  at('page-keys').hidden = page.gone || !page.base;
  text.disabled = page.gone;
  if (!isKept) say('This device keeps nothing: do not leave before you have handed in.', true);
  else say(page.gone ? 'In hand to be taken out: the page goes when your proposal is put in place. What still links to it stands below.' : isChanged() ? 'In hand: kept on this device until you hand it in.' : page.base ? 'As it stands in the library. Nothing is changed yet.' : 'A new page. Nothing is written yet.');
}

function written() {
  page.text = text.value;
  field.copy();
  keepNow();
  showPages();
  clearTimeout(timer);
  timer = setTimeout(look, pause);
}

function take(words) {
  text.value = words;
  written();
}

function showWrong(found) {
  const here = found.filter(each => each.path === path);
  const others = found.filter(each => each.path !== path);
  const mend = each => { if (proofed === page.text) field.write(each.mend.start, each.mend.end, each.mend.text); };
  at('wrong').replaceChildren(
    ...here.map(each => note(each, { go: field.go, mend: each.mend?.path === path ? mend : undefined })),
    ...others.map(each => draw('div', {}, draw('p', { class: 'wrong-where' }, 'On ', draw('a', { href: address(each.path) }, each.path)), note(each))));
  field.mark(here);
}

// What the server says of the text as it was asked about; a later question makes an earlier answer void.
async function look() {
  const mine = ++asked;
  const words = page.text;
  try {
    const seen = await proof(inMind(), path);
    if (mine !== asked) return;
    proofed = words;
    at('wrong-state').textContent = seen.errors + seen.warnings === 0 ? 'Nothing is wrong.'
      : `${seen.errors} ${seen.errors === 1 ? 'error' : 'errors'}, ${seen.warnings} ${seen.warnings === 1 ? 'warning' : 'warnings'}`;
    showWrong(seen.found);
    if (page.gone) at('page').replaceChildren(draw('p', { class: 'leaf-note' }, 'Nothing is seen of it any more.'));
    else showPage(at('page'), seen.html ?? '', seen.found.filter(each => each.path === path), '/api/pages/pictures/');
    walks = seen.walks;
    if (at('walk-fold', HTMLDetailsElement).open) walk.take(walks);
    if (at('changes-fold', HTMLDetailsElement).open) await showChanges();
  } catch (problem) {
    if (mine === asked) at('wrong-state').textContent = offline(problem) ? 'No connection to the server: the text is not looked through. Go on writing, it is kept here.' : problem.message;
  }
  document.body.dataset.looked = String(mine);
}

async function showChanges() {
  try {
    at('changes').replaceChildren(corrections((await changesOf(page.before, page.gone ? '' : page.text)).changes, 'What you change'));
  } catch (problem) {
    at('changes').replaceChildren(draw('p', { class: 'leaf-note' }, offline(problem) ? 'No connection to the server.' : problem.message));
  }
}

function showPages() {
  const paths = pathsInHand();
  const off = new Set(boxes().filter(box => !box.checked).map(box => box.value));
  at('pages').replaceChildren(at('pages').querySelector('legend'), ...(paths.length ? paths.map(each => draw('label', { class: 'tick' },
    draw('input', { type: 'checkbox', value: each, checked: !off.has(each) }), ' ', each, (each === path ? page.gone : inHand(each)?.gone) ? ' (taken out)' : '')) : [draw('p', {}, 'No page is in hand.')]));
  const others = paths.filter(each => each !== path);
  at('hand').hidden = others.length === 0;
  at('hand').replaceChildren('Also in hand: ', ...others.flatMap((each, place) => [place ? ', ' : '', draw('a', { href: address(each) }, each)]));
}

// The page changed in the library since it was begun from: what, and how to go on.
function showSince(now, changes) {
  const done = line => { at('since').hidden = true; at('since').replaceChildren(); keepNow(); text.focus(); at('hand-in-state').textContent = line; look(); };
  const onto = words => { Object.assign(page, { before: now.text ?? '', base: now.base }); take(words); };
  at('since').hidden = false;
  at('since').replaceChildren(
    draw('p', { class: 'leaf-note flagged' }, now.text === null ? 'This page is gone from the library, or has another name by now.' : 'Others changed this page since you began:'),
    now.text === null ? '' : corrections(changes, 'Changed since you began'),
    draw('div', { class: 'leaf-note keys-row' },
      now.text === null ? '' : draw('button', { type: 'button', onclick: () => carry(now, onto, done) }, 'Carry what I wrote over to it'),
      draw('button', { type: 'button', onclick: () => { onto(page.text); done('Your text stands as you wrote it, upon the page as it is now.'); } },
        now.text === null ? 'Propose it as a new page' : 'Keep my text: I took their changes in by hand')),
    draw('p', { class: 'leaf-note', id: 'since-state', role: 'status' }));
}

async function carry(now, onto, done) {
  try {
    const { text: both } = await merge(page.before, page.text, now.text);
    if (both === null) { at('since-state').textContent = 'You and others changed the same lines. Take theirs in by hand, then say that you did.'; return; }
    onto(both);
    done('Carried over. Look through it before you hand it in.');
  } catch (problem) {
    at('since-state').textContent = offline(problem) ? 'No connection to the server. Nothing was changed.' : problem.message;
  }
}

function goneAlready(base) {
  Object.assign(page, { text: '', before: '', base, gone: false });
  open('');
  at('trouble').textContent = 'Somebody took this page out already: nothing of it is in hand any more.';
}

async function standsNow() {
  const now = await readText(path);
  if (now.base === page.base) return;
  if (page.gone && now.text === null) { goneAlready(now.base); return; }
  if (now.text === page.text && !page.gone) { Object.assign(page, { before: now.text, base: now.base }); keepNow(); showPages(); return; }
  showSince(now, now.text === null ? [] : (await changesOf(page.before, now.text)).changes);
}

async function send(event) {
  event.preventDefault();
  keepNow();
  const paths = boxes().filter(box => box.checked).map(box => box.value);
  at('hand-in-state').textContent = paths.length ? 'Handing in…' : 'No page is in hand: change something first.';
  if (!paths.length) return;
  try {
    const sent = paths.map(each => [each, each === path ? page : inHand(each)]);
    const { number } = await handIn(at('note', HTMLTextAreaElement).value, sent.map(([each, kept]) => asSent(each, kept)));
    for (const [each] of sent) putBack(each);
    Object.assign(page, { before: page.text, gone: false });
    keepNote('');
    location.assign(`/proposals/${number}`);
  } catch (problem) {
    at('hand-in-state').textContent = offline(problem) ? 'No connection to the server. Your text is kept on this device: hand it in when there is one.' : problem.message;
    if (problem.missing?.includes(path)) await standsNow();
    else if (problem.missing?.length) at('hand-in-state').append(' ', draw('a', { href: address(problem.missing[0]) }, problem.missing[0]));
  }
}

// The page under its new id, and all that name it, come in hand together.
async function giveId(event) {
  event.preventDefault();
  at('rename-state').textContent = '';
  try {
    const { pages } = await rename(inMind(), path, at('new-id', HTMLInputElement).value.trim());
    const now = new Date().toISOString();
    for (const each of pages) {
      if (each.text === null && !each.base) putBack(each.path);
      else if (!keep(each.path, { text: each.text ?? each.before, before: each.before ?? '', base: each.base, at: now, gone: each.text === null })) throw Object.assign(new Error('This device keeps nothing: its storage is full or switched off.'), { status: 507 });
    }
    location.assign(address(pages.find(each => each.text !== null && each.path.endsWith(`/${at('new-id', HTMLInputElement).value.trim()}.md`)).path));
  } catch (problem) {
    at('rename-state').textContent = offline(problem) ? 'No connection to the server. Nothing was changed.' : problem.message;
  }
}

const begun = () => {
  const [folder, file = folder] = path.split('/');
  const id = file.split('.')[0];
  return `---\nkind: ${kinds[folder] ?? folder}\nid: ${id}\n---\n# ${id.charAt(0).toUpperCase()}${id.slice(1).replaceAll('-', ' ')}\n`;
};

function open(words) {
  text.value = words;
  text.setSelectionRange(0, 0); // a browser leaves the cursor behind the last line, and scrolls there
  page.text = words;
  field.copy();
  keepNow();
  showPages();
}

async function begin() {
  at('path').textContent = path;
  document.title = `${path}, write`;
  try { belongTo((await readSession()).name); } catch { /* offline: the last name's */ }
  at('note', HTMLTextAreaElement).value = noteInHand();
  const kept = inHand(path);
  if (kept) { page = { text: kept.text, before: kept.before, base: kept.base, gone: kept.gone === true }; open(kept.text); }
  try {
    if (kept) await standsNow();
    else {
      const now = await readText(path);
      page = { text: '', before: now.text ?? '', base: now.base, gone: false };
      open(now.text ?? begun());
    }
    await look();
  } catch (problem) {
    const line = offline(problem) ? 'No connection to the server, and this page is not on this device.' : problem.message;
    if (kept && offline(problem)) await look();
    else at('trouble').textContent = line;
    if (!kept) say('');
  }
  onOther(path, () => { at('trouble').textContent = 'This page is being written in another window too: the one written in last is kept.'; });
  document.body.dataset.ready = 'yes';
  await keepPages(true);
}

text.addEventListener('input', written);
at('page').addEventListener('click', event => {
  const link = within(event, 'a');
  const to = link && target(link, path);
  if (!to) return;
  event.preventDefault();
  location.assign(address(to));
});
// What was written stays under a page that is taken out, and comes back with it.
twice(at('put-back', HTMLButtonElement), 'Yes, drop what I wrote', () => {
  const wasGone = page.gone;
  page.gone = false;
  take(wasGone ? page.text : page.before);
  text.focus();
}, () => !page.gone);
at('take-out').addEventListener('click', () => { page.gone = true; written(); at('put-back').focus(); });
at('rename').addEventListener('submit', giveId);
at('walk-fold').addEventListener('toggle', () => { if (at('walk-fold', HTMLDetailsElement).open) walk.take(walks); });
at('changes-fold').addEventListener('toggle', () => { if (at('changes-fold', HTMLDetailsElement).open) showChanges(); });
at('note').addEventListener('input', () => keepNote(at('note', HTMLTextAreaElement).value));
at('hand-in').addEventListener('submit', send);
addEventListener('online', look);
addEventListener('beforeunload', event => { if (!isKept) event.preventDefault(); });
begin();
