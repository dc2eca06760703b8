// The people of a job.
import { draw } from '../draw.js';
import { behind, choice, field, shortForm } from './fields.js';

/** @type {Record<string, string>} */
const parts = { customer: 'Customer', owner: 'Owner', technician: 'Technician', contact: 'To be asked for' };

/**
 * @param {import('./fields.js').Save} save
 * @param {Told.JobPerson} [given]
 */
const personForm = (save, given) => shortForm({}, [
  choice('Who', 'part', Object.entries(parts), given?.part),
  field('Name', { name: 'name', value: given?.name, required: true }),
  field('Telephone', { name: 'phone', type: 'tel', value: given?.phone }),
], 'Write down the person', filled => ({ person: { person: given?.number, ...filled, name: filled.name ?? '' } }), save);

/**
 * @param {Told.JobPerson} person
 * @param {import('./fields.js').Save} save
 */
const card = (person, save) => draw('article', { class: 'card' },
  draw('h3', {}, parts[person.part] ?? person.part),
  draw('p', {}, person.name, person.phone ? [', ', draw('a', { href: `tel:${person.phone.replace(/[^+\d]/g, '')}` }, person.phone)] : ''),
  behind('Correct', personForm(save, person)));

/**
 * @param {HTMLElement} element
 * @param {Told.JobPerson[]} people
 * @param {import('./fields.js').Save} save
 */
export function drawPeople(element, people, save) {
  element.replaceChildren(...people.map(person => card(person, save)),
    ...behind(people.length ? 'Another person' : 'Write down a person', personForm(save)));
}
