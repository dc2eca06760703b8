// What is written down about a job beside the walk. Every change is saved at once, and what was refused stays in its form.
import { at } from '../draw.js';
import { readJob, Refused, writeJob } from '../post.js';
import { number } from '../sheet.js';
import { drawHandOver } from './hand-over.js';
import { drawNotes, drawVisits } from './lines.js';
import { drawPeople } from './people.js';
import { drawPhotos } from './photos.js';
import { drawUnits } from './units.js';

const id = decodeURIComponent(location.pathname.match(/^\/case\/([^/]+)\/job/)?.[1] ?? '');
let busy = false;

/** @param {Told.Job} view */
function show(view) {
  drawUnits(at('units'), view, save);
  drawPhotos(at('photos'), view, save, async () => show(await readJob(id)));
  drawPeople(at('people'), view.job.people, save);
  drawVisits(at('visits'), view, save);
  drawNotes(at('notes'), view.job.notes, save);
  drawHands(view.job.hands);
  at('trouble').textContent = '';
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
