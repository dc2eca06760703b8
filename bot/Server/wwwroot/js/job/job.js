// What is written down about a job beside the walk. Every change is saved at once, and what was refused stays in its form.
import { at, draw } from '../draw.js';
import { held } from '../held.js';
import { readJob, Refused, writeJob } from '../post.js';
import { number } from '../sheet.js';
import { drawHandOver } from './hand-over.js';
import { drawNotes, drawVisits } from './lines.js';
import { drawPeople } from './people.js';
import { drawPhotos } from './photos.js';
import { drawUnits } from './units.js';

const id = decodeURIComponent(location.pathname.match(/^\/case\/([^/]+)\/job/)?.[1] ?? '');
let busy = false;

/** @type {Record<string, string>} */
const changes = {
  unit: 'a unit', turned: 'another unit to work at', person: 'a person', note: 'a note', begun: 'another visit', ended: 'the end of a visit',
};

/** @param {Told.Job} view */
function show(view) {
  const back = held();
  drawUnits(at('units'), view, save);
  drawPhotos(at('photos'), view, save, async () => show(await readJob(id)));
  drawPeople(at('people'), view.job.people, save);
  drawVisits(at('visits'), view, save);
  drawNotes(at('notes'), view.job.notes, save);
  drawHands(view.job.hands);
  drawChange(view.job.change);
  at('trouble').textContent = '';
  back();
}

// What was written down last can be taken back, and then what was before it.
/** @param {Told.JobFacts['change']} change */
function drawChange(change) {
  at('change').replaceChildren(...(change ? [
    draw('p', {}, `Last written down: ${changes[change.what] ?? change.what}, by ${change.by}.`),
    draw('button', { type: 'button', onclick: () => takeBack(change.turn) }, 'Take it back'),
  ] : []));
}

/** @param {string} turn */
async function takeBack(turn) {
  const refused = await save({ takeBack: turn });
  at('trouble').textContent = refused?.message ?? '';
}

// Drawn anew only when the people changed: the words that were just drawn stay in sight.
/** @type {string | null} */
let hands = null;
/** @param {Told.Hand[]} now */
function drawHands(now) {
  if (hands !== null && JSON.stringify(now) === hands) return;
  hands = JSON.stringify(now);
  drawHandOver(at('hand'), id, now, async () => show(await readJob(id)));
}

/**
 * Writes one thing down: null when it is saved, else the refusal, to be shown where it belongs.
 * @type {import('./fields.js').Save}
 */
async function save(what) {
  if (busy) return new Refused(0, 'The last change is still being saved.');
  busy = true;
  try {
    show(await writeJob(id, { turnId: crypto.randomUUID(), ...what }));
    return null;
  } catch (problem) {
    return problem instanceof Refused ? problem : new Refused(0, 'No connection to the server. Nothing was saved; try again.');
  } finally {
    busy = false;
  }
}

at('number').textContent = `No. ${number(id)}`;
at('case', HTMLAnchorElement).href = `/case/${encodeURIComponent(id)}`;
try {
  show(await readJob(id));
} catch (problem) {
  at('trouble').textContent = problem instanceof Refused ? problem.message : 'No connection to the server. Load the page again when it is there.';
}
document.body.dataset.ready = 'yes';
