// Accounts, tokens and the audit lines, for administrators.
import { at, day, draw } from './draw.js';
import { held } from './held.js';
import {
  addAccount, changeAccount, listAccounts, listAudit, listTokens, makeToken, revokeToken,
} from './post.js';
import { twice } from './twice.js';

/** @type {(name: string, ...children: any[]) => HTMLElement} */
const cell = (name, ...children) => draw('td', { 'data-name': name }, ...children);
/**
 * @param {string} text
 * @param {string} about
 * @param {() => void} onclick
 */
const button = (text, about, onclick) => draw('button', { type: 'button', 'aria-label': `${text} ${about}`, onclick }, text);
/** @param {string[]} names */
const words = names => names.map(name => name.replace('-', ' ')).join(', ');

/** @param {() => Promise<unknown>} work */
async function act(work) {
  const back = held();
  at('trouble').textContent = '';
  try {
    await work();
    await show();
    back();
  } catch (problem) {
    at('trouble').textContent = problem instanceof Error ? problem.message : String(problem);
    at('trouble').scrollIntoView({ block: 'nearest' });
  }
}

/** @param {{ name: string, open: boolean, locked: boolean, roles: string[] }} account */
function person(account) {
  const state = account.open ? (account.locked ? 'Resting after wrong passwords' : 'Open') : 'Closed';
  const turn = account.open ? 'Close' : 'Open';
  return draw('tr', {}, draw('th', { scope: 'row' }, account.name), cell('May', words(account.roles)), cell('State', state),
    draw('td', { class: 'acts' }, button(turn, account.name, () => act(() => changeAccount(account.name, { open: !account.open })))));
}

/** @param {{ id: string, label: string, scopes: string[], madeAt: string, revokedAt?: string }} line */
function token(line) {
  return draw('tr', {}, draw('th', { scope: 'row' }, line.label), cell('May', words(line.scopes)), cell('Made', day(line.madeAt)),
    draw('td', { class: 'acts' }, line.revokedAt ? 'Ended'
      : twice(draw('button', { type: 'button', 'aria-label': `End ${line.label}` }, 'End'), 'End for good', () => act(() => revokeToken(line.id)))));
}

/**
 * @typedef {{ number: number, at: string, who: string, did: string, to: string }} Audited
 * @param {Audited} line
 */
const audit = line => draw('tr', {}, cell('When', day(line.at)), cell('Who', line.who), cell('Did', line.did), cell('To', line.to));

let oldest = 0;

/** @param {number} [before] */
async function showAudit(before) {
  /** @type {Audited[]} */
  const lines = await listAudit(before);
  oldest = lines.at(-1)?.number ?? 0;
  const rows = lines.map(audit);
  if (before) at('audit').append(...rows);
  else at('audit').replaceChildren(...rows);
  at('older').hidden = !(oldest > 1);
}

async function show() {
  const [accounts, tokens] = await Promise.all([listAccounts(), listTokens()]);
  at('people').replaceChildren(...accounts.map(person));
  at('tokens').replaceChildren(...tokens.map(token));
  await showAudit();
}

at('add').addEventListener('submit', event => {
  event.preventDefault();
  const fields = new FormData(at('add', HTMLFormElement));
  act(async () => {
    await addAccount({ name: fields.get('name'), password: fields.get('password'), roles: fields.getAll('role') });
    at('add', HTMLFormElement).reset();
  });
});

at('make').addEventListener('submit', event => {
  event.preventDefault();
  const fields = new FormData(at('make', HTMLFormElement));
  act(async () => {
    const made = await makeToken({ label: fields.get('label'), scopes: fields.getAll('scope') });
    at('secret').textContent = made.secret;
    at('secret').hidden = false;
    at('make', HTMLFormElement).reset();
  });
});

at('older').addEventListener('click', () => showAudit(oldest));
await act(async () => {});
document.body.dataset.ready = 'yes';
