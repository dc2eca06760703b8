// The list of claims.
import { states } from './claim-words.js';
import { at, day, draw } from './draw.js';
import { listClaims } from './post.js';

const trouble = at('trouble');
const state = at('state', HTMLSelectElement);

async function show() {
  try {
    const claims = await listClaims(state.value);
    at('index').replaceChildren(...claims.map((/** @type {Told.Claim & { at: string }} */ claim) => draw('li', {},
      draw('a', { href: `/claim/${claim.id}` },
        draw('span', {}, draw('span', { class: 'index-title' }, claim.id), ` ${states[claim.state]}`), day(claim.at)))));
    trouble.textContent = claims.length === 0 ? 'No claim stands so.' : '';
  } catch (problem) {
    trouble.textContent = problem instanceof Error ? problem.message : String(problem);
  }
  document.body.dataset.ready = 'yes';
}

state.addEventListener('change', show);
show();
