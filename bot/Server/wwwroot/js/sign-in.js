// Signing in; afterwards to where one was going, on this server only.
import { signIn } from './post.js';

const form = document.getElementById('form');
const trouble = document.getElementById('trouble');

// What stands after the # of a link comes along.
function onward() {
  const then = new URL(new URLSearchParams(location.search).get('then') ?? '/', location.origin);
  return then.origin === location.origin ? then.pathname + then.search + location.hash : '/';
}

form.addEventListener('submit', async event => {
  event.preventDefault();
  trouble.textContent = '';
  const fields = new FormData(form);
  try {
    await signIn(fields.get('username'), fields.get('password'));
    location.replace(onward());
  } catch (problem) {
    trouble.textContent = problem.message;
    document.getElementById('password').select();
  }
});
