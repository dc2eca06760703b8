// What the writing screens ask of the server.
import { ask } from '../post.js';

const json = (body, method = 'POST') => ({ method, headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body) });

export const listPages = () => ask('/api/pages');
export const readText = path => ask(`/api/pages/text?${new URLSearchParams({ path })}`);
export const proof = (pages, show) => ask('/api/pages/proof', json({ pages, show }));
export const playWalk = (pages, walk) => ask('/api/pages/walk', json({ pages, walk }));
export const changesOf = (before, after) => ask('/api/pages/changes', json({ before, after }));
export const merge = (before, mine, theirs) => ask('/api/pages/merge', json({ before, mine, theirs }));
export const rename = (pages, show, id) => ask('/api/pages/rename', json({ pages, show, id }));
export const listProposals = () => ask('/api/proposals');
export const readProposal = number => ask(`/api/proposals/${number}`);
export const handIn = (note, pages) => ask('/api/proposals', json({ note, pages }));
export const takeBack = number => ask(`/api/proposals/${number}`, { method: 'DELETE' });
