// Signing in; afterwards to where one was going, on this server only.
import { at } from './draw.js';
import { Refused, signIn } from './post.js';

const form = at('form', HTMLFormElement);
const trouble = at('trouble');

// What stands after the # of a link comes along. The whole address is given back: a path such as /.//elsewhere would by itself be
// read as the name of another server.
function onward() {
  const asked = new URLSearchParams(location.search).get('then') ?? '/';
  const then = URL.canParse(asked, location.origin) ? new URL(asked, location.origin) : null;
  return then?.origin === location.origin ? then.origin + then.pathname + then.search + location.hash : '/';
}

form.addEventListener('submit', async event => {
  event.preventDefault();
  trouble.textContent = '';
  const fields = new FormData(form);
  try {
    await signIn(String(fields.get('username')), String(fields.get('password')));
    location.replace(onward());
  } catch (problem) {
    trouble.textContent = problem instanceof Refused ? problem.message : 'No connection to the server. Try again.';
    at('password', HTMLInputElement).select();
  }
});
