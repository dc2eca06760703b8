// One's own password, changed with the old one.
import { at } from './draw.js';
import { changePassword, Refused } from './post.js';

const form = at('form', HTMLFormElement);
const trouble = at('trouble');
const typed = (/** @type {string} */ name) => at(name, HTMLInputElement);

form.addEventListener('submit', async event => {
  event.preventDefault();
  trouble.textContent = '';
  try {
    await changePassword(typed('name').value, typed('password').value, typed('fresh').value);
    location.replace('/');
  } catch (problem) {
    trouble.textContent = problem instanceof Refused ? problem.message : 'No connection to the server. Nothing was changed.';
    typed(problem instanceof Refused && problem.status === 422 ? 'fresh' : 'password').select();
  }
});
document.body.dataset.ready = 'yes';
