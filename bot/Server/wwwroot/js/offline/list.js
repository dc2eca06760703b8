// The sheets that this device knows, for the list while there is no signal.
import { list } from './notebook.js';

/** @param {Told.Case} view */
const title = view => [view.head.unit, view.head.shows].filter(Boolean).join(': ') || view.turns.find(turn => turn.said)?.said;

/** Those in which something was said, newest first, and how many answers of each wait to be sent. */
export async function listKept() {
  return (await list()).filter(({ view }) => view.turns.some(turn => turn.said)).map(({ id, view, away }) => ({
    id, title: title(view), lastAt: view.turns.at(-1)?.at ?? '', waiting: away.length,
  }));
}
