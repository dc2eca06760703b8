// Signing in; afterwards to where one was going, on this server only.
import { at } from './draw.js';
import { readSession, Refused, signIn, writesOnly } from './post.js';

const form = at('form', HTMLFormElement);
const trouble = at('trouble');

// What stands after the # of a link comes along. The whole address is given back: a path such as /.//elsewhere would by itself be
// read as the name of another server.
function onward() {
  const asked = new URLSearchParams(location.search).get('then') ?? '/';
  const then = URL.canParse(asked, location.origin) ? new URL(asked, location.origin) : null;
  return then?.origin === location.origin ? then.origin + then.pathname + then.search + location.hash : '/';
}

// A job sheet is not for who only writes pages.
async function home() {
  const there = onward();
  return new URL(there, location.origin).pathname === '/' && writesOnly(await readSession()) ? '/pages' : there;
}

/** @type {Record<string, string>} */
const refused = {
  company: 'Your company’s sign-in did not let you in here, or there is no open account for you. Whoever keeps the accounts can help.',
  away: 'Your company’s sign-in does not answer. Try again, or sign in with a password.',
};

// Whoever comes back from their company is signed in already.
async function look() {
  const asked = new URLSearchParams(location.search);
  trouble.textContent = refused[asked.get('refused') ?? ''] ?? '';
  const session = await readSession();
  if (session.accounts && session.name && asked.has('then')) location.replace(onward());
  const company = at('company', HTMLAnchorElement);
  company.hidden = !session.company;
  company.href = `/sign-in/company?${new URLSearchParams({ then: onward() })}`;
}

form.addEventListener('submit', async event => {
  event.preventDefault();
  trouble.textContent = '';
  const fields = new FormData(form);
  try {
    await signIn(String(fields.get('username')), String(fields.get('password')));
    location.replace(await home());
  } catch (problem) {
    trouble.textContent = problem instanceof Refused ? problem.message : 'No connection to the server. Try again.';
    at('password', HTMLInputElement).select();
  }
});

await look().catch(() => { /* the form works without */ });
document.body.dataset.ready = 'yes';
