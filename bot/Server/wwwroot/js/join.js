// Joins a case by the words that somebody said, or by the link they sent.
import { at } from './draw.js';
import { joinCase, Refused } from './post.js';

// The words of a link come after the #, so they are in no log of any server; here they leave the address too.
const sent = location.hash.slice(1).replaceAll('-', ' ');
if (sent) {
  at('code', HTMLInputElement).value = sent;
  history.replaceState(null, '', '/join');
}

at('join').addEventListener('submit', async event => {
  event.preventDefault();
  at('trouble').textContent = '';
  try {
    const joined = await joinCase(at('code', HTMLInputElement).value);
    location.assign(`/case/${encodeURIComponent(joined.case)}`);
  } catch (problem) {
    at('trouble').textContent = problem instanceof Refused ? problem.message : 'No connection to the server. Try again.';
    at('code').setAttribute('aria-invalid', 'true');
    at('code').focus();
  }
});
at('code').addEventListener('input', () => at('code').removeAttribute('aria-invalid'));
(sent ? at('join').querySelector('button') : at('code'))?.focus();
document.body.dataset.ready = 'yes';
