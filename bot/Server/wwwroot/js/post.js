// The requests of the page. A refusal has the server's own line; anything else is a lost connection.
export class Refused extends Error {
  /**
   * @param {number} status
   * @param {string} line
   * @param {string[]} [missing]
   * @param {string} [meant]
   */
  constructor(status, line, missing = [], meant = undefined) {
    super(line);
    this.status = status;
    this.meant = meant;
    this.missing = missing;
  }
}

/**
 * @param {string} path
 * @param {RequestInit} [options]
 * @param {number} [patience] ms
 * @returns {Promise<any>}
 */
export async function ask(path, options = {}, patience = 20_000) {
  const response = await send(path, options, patience);
  return response.status === 204 ? undefined : response.json();
}

/**
 * A page of a list, and where the next one is: the address in the header Link, null on the last page.
 * @param {string} path
 * @returns {Promise<{ rows: any[], next: string | null }>}
 */
async function askPage(path) {
  const response = await send(path, {}, 20_000);
  return { rows: await response.json(), next: /^<([^>]+)>; rel="next"$/.exec(response.headers.get('Link') ?? '')?.[1] ?? null };
}

/**
 * @param {string} path
 * @param {RequestInit} options
 * @param {number} patience ms
 */
async function send(path, options, patience) {
  const response = await fetch(path, { ...options, signal: AbortSignal.timeout(patience) });
  if (response.ok) return response;
  if (response.status === 401 && !location.pathname.startsWith('/sign-in')) location.assign(`/sign-in?then=${encodeURIComponent(location.pathname)}`);
  let line = `The server answered ${response.status}.`;
  /** @type {string[]} */
  let missing = [];
  /** @type {string | undefined} */
  let meant;
  try { ({ detail: line = line, missing = [], meant } = await response.json()); } catch { /* no line of its own */ }
  throw new Refused(response.status, line, missing, meant);
}

/**
 * @param {object} body
 * @returns {RequestInit}
 */
const json = (body, method = 'POST') => ({ method, headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body) });

/** @returns {Promise<Told.Case>} */
export const openCase = () => ask('/api/cases', { method: 'POST' });
/**
 * @param {string} id
 * @param {number} [patience] ms
 * @returns {Promise<Told.Case>}
 */
export const readCase = (id, patience) => ask(`/api/cases/${encodeURIComponent(id)}`, {}, patience);
/**
 * @param {string} id
 * @returns {Promise<{ last: number, turns: Kept.Turn[] }>}
 */
export const readLog = id => ask(`/api/cases/${encodeURIComponent(id)}/log`);
/**
 * @param {string} id
 * @param {number} basis
 * @param {Kept.Turn[]} turns
 */
export const bringTurns = (id, basis, turns) => ask(`/api/cases/${encodeURIComponent(id)}/brought`, json({ basis, turns }), 60_000);
/**
 * @param {string} id
 * @returns {Promise<Told.Summary>}
 */
export const readSummary = id => ask(`/api/cases/${encodeURIComponent(id)}/summary`);
/** @returns {Promise<Told.Listed[]>} */
export const listCases = () => ask('/api/cases');
/**
 * @param {string} id
 * @param {{ turnId: string } & Said.Body} turn
 * @returns {Promise<Told.Taken>}
 */
export const sendTurn = (id, turn) => ask(`/api/cases/${encodeURIComponent(id)}/turns`, json(turn));
/**
 * @param {string} id
 * @returns {Promise<Told.Claim>}
 */
export const beginClaim = id => ask(`/api/cases/${encodeURIComponent(id)}/claims`, { method: 'POST' });
/**
 * @param {string} id
 * @returns {Promise<Told.Claim>}
 */
export const readClaim = id => ask(`/api/claims/${encodeURIComponent(id)}`);
/** @param {string} state */
export const listClaims = state => ask(`/api/claims?limit=1000&state=${encodeURIComponent(state)}`);
/**
 * @param {string} id
 * @param {object} act
 * @returns {Promise<Told.Claim>}
 */
export const actOnClaim = (id, act) => ask(`/api/claims/${encodeURIComponent(id)}/acts`, json(act));
export const readFilters = () => ask('/api/work/filters');
/**
 * @param {{ find: string } & Record<string, string>} view
 * @param {number} limit
 */
export const readWork = ({ find, ...view }, limit) => askPage(`/api/work?${new URLSearchParams({ text: find, limit: String(limit), ...view })}`);
export const readOn = askPage;
/** @param {string} id */
const job = id => `/api/cases/${encodeURIComponent(id)}/job`;
/**
 * @param {string} id
 * @returns {Promise<Told.Job>}
 */
export const readJob = id => ask(job(id));
/**
 * @param {string} id
 * @param {object} what
 * @returns {Promise<Told.Job>}
 */
export const writeJob = (id, what) => ask(job(id), json(what));
/**
 * @param {string} id
 * @param {Blob} photo
 * @param {Record<'turnId' | 'shows' | 'unit', string>} told
 */
export const addPhoto = (id, photo, { turnId, shows, unit }) =>
  ask(`/api/cases/${encodeURIComponent(id)}/photos?${new URLSearchParams({ turnId, shows, unit })}`,
    { method: 'POST', headers: { 'Content-Type': photo.type || 'application/octet-stream' }, body: photo }, 120_000);
/** @param {string} id */
export const offerCase = id => ask(`/api/cases/${encodeURIComponent(id)}/hand-over`, { method: 'POST' });
/** @param {string} id */
export const takeCodeBack = id => ask(`/api/cases/${encodeURIComponent(id)}/hand-over`, { method: 'DELETE' });
/**
 * @param {string} id
 * @param {string} name
 */
export const takeOut = (id, name) => ask(`/api/cases/${encodeURIComponent(id)}/hands/${encodeURIComponent(name)}`, { method: 'DELETE' });
/** @param {string} code */
export const joinCase = code => ask('/api/join', json({ code }));
/**
 * @param {string} id
 * @param {string} typed
 * @param {string} series
 */
export const checkSerial = (id, typed, series) => ask(`${job(id)}/serial?${new URLSearchParams({ typed, series })}`);
/** @param {string} id */
const call = id => `/api/cases/${encodeURIComponent(id)}/call`;
/** @param {string} id */
export const readCall = id => ask(call(id));
/**
 * @param {string} id
 * @param {object} slip
 */
export const putCallAside = (id, slip) => ask(call(id), json(slip, 'PUT'));
/** @param {string} id */
export const takeCallUp = id => ask(call(id), { method: 'DELETE' });
/**
 * @param {string} id
 * @param {string} text
 */
export const noteCall = (id, text) => ask(`${call(id)}/notes`, json({ text }));
/**
 * @param {string} [about] a name, a number, words of a note
 * @returns {Promise<Told.Slip[]>}
 */
export const waitingCalls = about => ask(about ? `/api/calls?${new URLSearchParams({ text: about })}` : '/api/calls');

export const readPrivacy = () => ask('/api/privacy');
/** @param {string} about */
export const findPerson = about => ask(`/api/personal/cases?${new URLSearchParams({ about })}`);
/** @param {string} id */
export const removeWords = id => ask(`/api/personal/cases/${encodeURIComponent(id)}`, { method: 'DELETE' });

/** @returns {Promise<{ accounts: boolean, company: boolean, name?: string, roles: string[] }>} */
export const readSession = () => ask('/api/session');
/**
 * Whether somebody may write pages and nothing else.
 * @param {{ roles: string[] }} session
 */
export const writesOnly = session => session.roles.length === 1 && session.roles[0] === 'author';
/**
 * @param {string} name
 * @param {string} password
 */
export const signIn = (name, password) => ask('/api/session', json({ name, password }));
/**
 * @param {string} name
 * @param {string} password
 * @param {string} fresh
 */
export const changePassword = (name, password, fresh) => ask('/api/session/password', json({ name, password, fresh }));
export const signOut = () => ask('/api/session', { method: 'DELETE' });
export const listAccounts = () => ask('/api/accounts');
/** @param {object} account */
export const addAccount = account => ask('/api/accounts', json(account));
/**
 * @param {string} name
 * @param {object} change
 */
export const changeAccount = (name, change) => ask(`/api/accounts/${encodeURIComponent(name)}`, json(change, 'PATCH'));
export const listTokens = () => ask('/api/tokens');
/** @param {object} token */
export const makeToken = token => ask('/api/tokens', json(token));
/** @param {string} id */
export const revokeToken = id => ask(`/api/tokens/${encodeURIComponent(id)}`, { method: 'DELETE' });
/** @param {number} [before] */
export const listAudit = before => ask(before ? `/api/audit?before=${before}` : '/api/audit');
