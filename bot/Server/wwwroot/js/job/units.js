// The units of a job: their plates, and a serial number that is checked as soon as its field is left.
import { draw } from '../draw.js';
import { checkSerial, Refused } from '../post.js';
import { behind, choice, field, shortForm } from './fields.js';

/** @type {(name: string, value: string | undefined, look?: string) => HTMLElement[]} */
const line = (name, value, look) => value ? [draw('dt', {}, name), draw('dd', { class: look }, value)] : [];

/**
 * @param {() => HTMLFormElement} form
 * @param {Told.Job} view
 * @param {Told.JobUnit} [given]
 */
function serialField(form, view, given) {
  const wrong = draw('span', { class: 'wrong', role: 'alert', id: `serial-wrong-${given?.number ?? 'new'}` });
  const hint = draw('span', { class: 'hint' });
  const label = field('Serial number, from the plate', {
    name: 'serial', value: given?.serial, autocapitalize: 'characters', spellcheck: 'false', maxlength: 60, 'aria-describedby': wrong.id,
  }, hint, wrong);
  const input = /** @type {HTMLInputElement} */ (label.querySelector('input'));
  /** @type {(text: string, meant?: string) => void} */
  const say = (text, meant) => {
    input.setAttribute('aria-invalid', String(Boolean(text)));
    wrong.replaceChildren(...[text, meant ? draw('button', { type: 'button', onclick: () => { input.value = meant; look(); } }, `Use ${meant}`) : ''].filter(Boolean));
  };
  const series = () => String(new FormData(form()).get('series') ?? '');
  async function look() {
    const example = view.series.find(known => known.id === series())?.serial;
    hint.textContent = example ? `Looks like ${example}` : '';
    if (!input.value.trim()) return say('');
    try {
      await checkSerial(view.case, input.value, series());
      say('');
    } catch (problem) {
      if (problem instanceof Refused && problem.status === 422) say(problem.message, problem.meant);
    }
  }
  input.addEventListener('change', look);
  return { label, look };
}

/**
 * @param {Told.Job} view
 * @param {import('./fields.js').Save} save
 * @param {Told.JobUnit} [given]
 */
function unitForm(view, save, given) {
  const serial = serialField(() => form, view, given);
  const options = [['', 'Not known'], ...view.series.map(({ id, title }) => [id, title])];
  const series = choice('Series', 'series', options, given?.series ?? view.said ?? '');
  const form = shortForm({ class: 'unit-form' }, [
    series, serial.label,
    field('Model', { name: 'model', value: given?.model }),
    field('Installed on', { name: 'installed', type: 'date', value: given?.installed }),
    field('Where it stands', { name: 'site', value: given?.site }),
  ], 'Write down the unit', filled => ({ unit: { unit: given?.number, ...filled } }), save);
  series.addEventListener('change', serial.look);
  serial.look();
  return form;
}

/**
 * @param {Told.JobUnit} unit
 * @param {Told.Job} view
 * @param {import('./fields.js').Save} save
 */
function card(unit, view, save) {
  const here = unit.number === view.job.atHand;
  return draw('article', { class: here ? 'card here' : 'card' },
    draw('h3', {}, `Unit ${unit.number}`, here && view.job.units.length > 1 ? draw('span', { class: 'here-word' }, 'the work is here') : ''),
    draw('dl', {},
      line('Series', view.series.find(known => known.id === unit.series)?.title ?? unit.series), line('Serial', unit.serial, 'serial'),
      line('Model', unit.model), line('Installed', unit.installed), line('Stands', unit.site)),
    here ? '' : draw('div', { class: 'acts' }, draw('button', { type: 'button', onclick: () => save({ turnTo: unit.number }) }, 'Go on at this unit')),
    behind('Correct', unitForm(view, save, unit)));
}

/**
 * @param {HTMLElement} element
 * @param {Told.Job} view
 * @param {import('./fields.js').Save} save
 */
export function drawUnits(element, view, save) {
  const { units } = view.job;
  element.replaceChildren(...units.map(unit => card(unit, view, save)),
    ...(units.length ? behind('Another unit', unitForm({ ...view, said: '' }, save)) : [unitForm(view, save)]));
}
