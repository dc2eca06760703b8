// The engine of this page: started when it is needed, on the pages that a case stands on.
import { Engine } from './engine.js';
import { kitFor, readPack } from './shelf.js';
import { eventsOf, versionOf } from './turns.js';

let running = null;
let version = null;
let begun = null;

/** Whether a case can go on here now. */
export const isRunning = () => version !== null;

async function start(kit) {
  running?.stop();
  [running, version, begun] = [new Engine(), null, null];
  version = await running.start(kit.engine.root, await readPack(kit.pages));
}

/** Gets ready for free words in a quiet moment. */
export function warm() {
  setTimeout(() => { if (isRunning()) running.warm().catch(() => {}); }, 5_000);
}

/** @type {Promise<boolean | void>} */
let starting = Promise.resolve();

/** Makes the engine ready for a case. @returns false when this device has not kept what it needs. */
export function ready(wanted) {
  starting = starting.catch(() => {}).then(async () => {
    const kit = await kitFor(wanted);
    if (!kit) return false;
    if (version !== kit.pages.version) await start(kit);
    return true;
  });
  return starting;
}

/** Takes one turn of a case after all its events. */
export async function take(record, turn) {
  if (!await ready(versionOf([...record.log, ...record.away]))) throw new Error('nothing is kept to work without signal');
  const events = eventsOf(record);
  const tip = `${record.id} ${events.length}`;
  if (begun !== tip) await running.begin(JSON.stringify(events));
  begun = null;
  const taken = await running.take(turn);
  begun = `${record.id} ${events.length + taken.events.length}`;
  return taken;
}
