// The engine of this page: started when it is needed, on the pages that a case stands on.
import { Engine } from './engine.js';
import { kitFor, readPack } from './shelf.js';
import { eventsOf, versionOf } from './turns.js';

/** @type {Engine | null} */
let running = null;
/** @type {string | null} */
let version = null;
/** @type {string | null} */
let begun = null;

/** Whether a case can go on here now. */
export const isRunning = () => version !== null;

/** @param {{ engine: Kept.Shelved, pages: Kept.Shelved }} kit */
async function start(kit) {
  running?.stop();
  const engine = new Engine();
  [running, version, begun] = [engine, null, null];
  version = await engine.start(kit.engine.root, await readPack(kit.pages));
}

// The start costs a phone half a minute of work, learning to read a minute: pages that are left sooner are spared both.
const soon = 5_000, later = 20_000;

/** Gets ready for free words in a quiet moment. */
export function warm() {
  setTimeout(() => { if (isRunning()) running?.warm().catch(() => {}); }, later);
}

/**
 * Starts the engine in a quiet moment, though there is signal; whoever needs it sooner starts it himself.
 * @param {string | null} wanted the version of its pages
 */
export async function readySoon(wanted) {
  await new Promise(resolve => { setTimeout(resolve, soon); });
  if (await ready(wanted)) warm();
}

/** @type {Promise<boolean>} */
let starting = Promise.resolve(false);

/**
 * Makes the engine ready for a case; false when this device has not kept what it needs.
 * @param {string | null} wanted the version of its pages
 */
export function ready(wanted) {
  starting = starting.catch(() => false).then(async () => {
    const kit = await kitFor(wanted);
    if (!kit) return false;
    if (version !== kit.pages.version) await start(kit);
    return true;
  });
  return starting;
}

/**
 * Takes a case up before its next turn is there, while the person reads.
 * @param {Kept.Case} record
 */
export async function wake(record) {
  if (!await ready(versionOf([...record.log, ...record.away])) || !running) return;
  await takeUp(running, record, eventsOf(record));
  warm();
}

/**
 * @param {Engine} engine
 * @param {Kept.Case} record
 * @param {object[]} events
 */
async function takeUp(engine, record, events) {
  const tip = `${record.id} ${events.length}`;
  if (begun === tip) return;
  await engine.begin(JSON.stringify(events));
  begun = tip;
}

/**
 * Takes one turn of a case after all its events.
 * @param {Kept.Case} record
 * @param {{ turnId: string, by: string, opening?: boolean }} turn
 */
export async function take(record, turn) {
  if (!await ready(versionOf([...record.log, ...record.away])) || !running) throw new Error('nothing is kept to work without signal');
  const events = eventsOf(record);
  await takeUp(running, record, events);
  begun = null;
  const taken = await running.take(turn);
  begun = `${record.id} ${events.length + taken.events.length}`;
  return taken;
}
