// One proposal: what it changes, what changed since, the file for whoever reviews it, taking it back, going on with it.
import { at, day, draw } from '../draw.js';
import { readSession } from '../post.js';
import { corrections } from './corrections.js';
import { belongTo, inHand, keep } from './hand.js';
import { readProposal, readText, takeBack } from './requests.js';
import { standing } from './standing.js';

const number = Number(location.pathname.split('/').pop());
const box = (name, ...value) => draw('div', { class: 'box' }, draw('dt', {}, name), draw('dd', {}, value));
const address = path => `/pages/write/${path.split('/').map(encodeURIComponent).join('/')}`;

async function act(work) {
  at('trouble').textContent = '';
  try {
    await work();
  } catch (problem) {
    at('trouble').textContent = problem.status ? problem.message : 'No connection to the server. Nothing was changed.';
  }
}

// Its text becomes a page in hand again, upon the page as it is now.
async function goOn(proposal) {
  for (const page of proposal.pages) {
    if (inHand(page.path)) throw Object.assign(new Error(`${page.path} is in hand already: hand it in or put it back first.`), { status: 409 });
    const now = await readText(page.path);
    if (!keep(page.path, { text: page.text ?? now.text ?? '', gone: page.takesOut, before: now.text ?? '', base: now.base, at: new Date().toISOString() }))
      throw Object.assign(new Error('This device keeps nothing: its storage is full or switched off.'), { status: 507 });
  }
  location.assign(address(proposal.pages[0].path));
}

function page(each) {
  return draw('section', { class: 'leaf', 'aria-label': each.path },
    draw('h2', { class: 'leaf-name' }, each.path, each.isNew ? ' (new page)' : each.takesOut ? ' (taken out)' : ''),
    corrections(each.changes, `What it changes on ${each.path}`),
    each.isGone ? draw('p', { class: 'leaf-note flagged' }, 'This page is gone by now, or has another name.') : '',
    each.since ? [draw('p', { class: 'leaf-note flagged' }, 'Changed on the page since, by others:'), corrections(each.since, `Changed since on ${each.path}`)] : '');
}

function show(proposal) {
  at('title').textContent = `Proposal ${proposal.number}`;
  document.title = `Proposal ${proposal.number}`;
  at('boxes').replaceChildren(box('By', proposal.by), box('Handed in', day(proposal.at)), box('Stands', standing(proposal)),
    ...(proposal.takenBackAt ? [box('Taken back', proposal.takenBackBy, ' ', day(proposal.takenBackAt))] : []));
  at('note').textContent = proposal.note;
  at('keys').replaceChildren(
    proposal.takenBackAt ? '' : draw('a', { class: 'key', href: `/api/proposals/${proposal.number}/patch`, download: true }, 'Patch for review'),
    draw('button', { type: 'button', onclick: () => act(() => goOn(proposal)) }, 'Go on writing'),
    proposal.mayTakeBack ? draw('button', { type: 'button', onclick: () => act(async () => { show(await takeBack(number)); at('state').textContent = 'Taken back.'; }) }, 'Take it back') : '');
  at('state').textContent = '';
  at('pages').replaceChildren(...proposal.pages.map(page));
}

try { belongTo((await readSession()).name); } catch { /* offline */ }
await act(async () => show(await readProposal(number)));
if (at('trouble').textContent) at('state').textContent = '';
document.body.dataset.ready = 'yes';
