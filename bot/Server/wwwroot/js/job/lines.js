// Visits and notes: lines with their times.
import { day, draw } from '../draw.js';
import { shortForm } from './fields.js';

/** @param {Told.JobFacts['visits'][number]} visit */
const visit = ({ number, begun, ended, by }) => draw('li', {}, `Visit ${number}: `, day(begun), ended ? [' to ', day(ended)] : ', going on',
  draw('span', { class: 'by' }, by));

/**
 * @param {HTMLElement} element
 * @param {Told.Job} view
 * @param {import('./fields.js').Save} save
 */
export function drawVisits(element, { job }, save) {
  const open = job.visits.at(-1)?.ended === undefined;
  element.replaceChildren(draw('ol', { class: 'lines' }, job.visits.map(visit)),
    draw('div', { class: 'acts' }, draw('button', { type: 'button', onclick: () => save({ visit: open ? 'end' : 'begin' }) },
      open ? 'This visit is over' : 'Begin another visit')));
}

/**
 * @param {HTMLElement} element
 * @param {Told.JobFacts['notes']} notes
 * @param {import('./fields.js').Save} save
 */
export function drawNotes(element, notes, save) {
  element.replaceChildren(
    draw('ol', { class: 'lines' }, notes.map(note => draw('li', {}, note.text, draw('span', { class: 'by' }, `${note.by}, `, day(note.at))))),
    shortForm({}, [draw('label', {}, 'Note', draw('textarea', { name: 'note', rows: 3, maxlength: 2000 }))],
      'Note it', ({ note }) => ({ note: note ?? '' }), save));
}
