// The list of earlier cases.
import { day, draw } from './draw.js';
import { listCases } from './post.js';

const trouble = document.getElementById('trouble');
try {
  const cases = await listCases();
  document.getElementById('index').replaceChildren(...cases.map(line => draw('li', {},
    draw('a', { href: `/case/${encodeURIComponent(line.id)}` }, draw('span', { class: 'index-title' }, line.title), day(line.lastAt)))));
  trouble.textContent = cases.length === 0 ? 'No sheet has been filled in yet.' : '';
} catch (problem) {
  trouble.textContent = problem.message;
}
