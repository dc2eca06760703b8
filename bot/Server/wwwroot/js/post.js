// The requests of the page. A refusal has the server's own line; anything else is a lost connection.
export class Refused extends Error {
  constructor(status, line, missing = [], meant = null) {
    super(line);
    this.status = status;
    this.meant = meant;
    this.missing = missing;
  }
}

export async function ask(path, options = {}, patience = 20_000) {
  const response = await fetch(path, { ...options, signal: AbortSignal.timeout(patience) });
  if (response.status === 204) return undefined;
  if (response.ok) return response.json();
  if (response.status === 401 && location.pathname !== '/sign-in') location.assign(`/sign-in?then=${encodeURIComponent(location.pathname)}`);
  let line = `The server answered ${response.status}.`;
  let missing = [];
  let meant;
  try { ({ detail: line = line, missing = [], meant } = await response.json()); } catch { /* no line of its own */ }
  throw new Refused(response.status, line, missing, meant);
}

const json = (body, method = 'POST') => ({ method, headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body) });

/** @returns {Promise<Told.Case>} */
export const openCase = () => ask('/api/cases', { method: 'POST' });
/**
 * @param {string} id
 * @param {number} [patience] ms
 * @returns {Promise<Told.Case>}
 */
export const readCase = (id, patience) => ask(`/api/cases/${encodeURIComponent(id)}`, {}, patience);
export const readLog = id => ask(`/api/cases/${encodeURIComponent(id)}/log`);
export const bringTurns = (id, basis, turns) => ask(`/api/cases/${encodeURIComponent(id)}/brought`, json({ basis, turns }), 60_000);
export const readSummary = id => ask(`/api/cases/${encodeURIComponent(id)}/summary`);
export const listCases = () => ask('/api/cases');
/**
 * @param {string} id
 * @param {{ turnId: string } & Said.Body} turn
 * @returns {Promise<Told.Taken>}
 */
export const sendTurn = (id, turn) => ask(`/api/cases/${encodeURIComponent(id)}/turns`, json(turn));
export const beginClaim = id => ask(`/api/cases/${encodeURIComponent(id)}/claims`, { method: 'POST' });
export const readClaim = id => ask(`/api/claims/${encodeURIComponent(id)}`);
export const listClaims = state => ask(`/api/claims?limit=1000&state=${encodeURIComponent(state)}`);
export const actOnClaim = (id, act) => ask(`/api/claims/${encodeURIComponent(id)}/acts`, json(act));
export const readFilters = () => ask('/api/work/filters');
export const readWork = ({ find, ...view }) => ask(`/api/work?${new URLSearchParams({ text: find, ...view })}`);
const job = id => `/api/cases/${encodeURIComponent(id)}/job`;
export const readJob = id => ask(job(id));
export const writeJob = (id, what) => ask(job(id), json(what));
export const addPhoto = (id, photo, { turnId, shows, unit }) =>
  ask(`/api/cases/${encodeURIComponent(id)}/photos?${new URLSearchParams({ turnId, shows, unit })}`,
    { method: 'POST', headers: { 'Content-Type': photo.type || 'application/octet-stream' }, body: photo }, 120_000);
export const offerCase = id => ask(`/api/cases/${encodeURIComponent(id)}/hand-over`, { method: 'POST' });
export const takeCodeBack = id => ask(`/api/cases/${encodeURIComponent(id)}/hand-over`, { method: 'DELETE' });
export const takeOut = (id, name) => ask(`/api/cases/${encodeURIComponent(id)}/hands/${encodeURIComponent(name)}`, { method: 'DELETE' });
export const joinCase = code => ask('/api/join', json({ code }));
export const checkSerial = (id, typed, series) => ask(`${job(id)}/serial?${new URLSearchParams({ typed, series })}`);
const call = id => `/api/cases/${encodeURIComponent(id)}/call`;
export const readCall = id => ask(call(id));
export const putCallAside = (id, slip) => ask(call(id), json(slip, 'PUT'));
export const takeCallUp = id => ask(call(id), { method: 'DELETE' });
export const noteCall = (id, text) => ask(`${call(id)}/notes`, json({ text }));
export const waitingCalls = () => ask('/api/calls');

export const readPrivacy = () => ask('/api/privacy');
export const findPerson = about => ask(`/api/personal/cases?${new URLSearchParams({ about })}`);
export const removeWords = id => ask(`/api/personal/cases/${encodeURIComponent(id)}`, { method: 'DELETE' });

export const readSession = () => ask('/api/session');
export const signIn = (name, password) => ask('/api/session', json({ name, password }));
export const signOut = () => ask('/api/session', { method: 'DELETE' });
export const listAccounts = () => ask('/api/accounts');
export const addAccount = account => ask('/api/accounts', json(account));
export const changeAccount = (name, change) => ask(`/api/accounts/${encodeURIComponent(name)}`, json(change, 'PATCH'));
export const listTokens = () => ask('/api/tokens');
export const makeToken = token => ask('/api/tokens', json(token));
export const revokeToken = id => ask(`/api/tokens/${encodeURIComponent(id)}`, { method: 'DELETE' });
export const listAudit = before => ask(before ? `/api/audit?before=${before}` : '/api/audit');
