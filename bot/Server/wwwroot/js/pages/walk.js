// A walk played on pages that need not be finished: each answer is a line with the belief and the plan's minutes after it.
import { draw } from '../draw.js';

const percent = share => share > 0 && share < 0.001 ? 'under 0.1 %' : `${(share * 100).toFixed(share < 0.0995 ? 1 : 0)} %`;
const minutes = value => `${value.toFixed(1)} min`;
const span = ({ leastMinutes: least, minutes: most }) => minutes(least) === minutes(most) ? minutes(most) : `${least.toFixed(1)} to ${minutes(most)}`;

function bars(belief, many) {
  return draw('ol', { class: 'odds' }, belief.slice(0, many).map(fault => {
    const filled = draw('span', { class: 'odds-filled' });
    filled.style.inlineSize = `${(fault.probability * 100).toFixed(1)}%`;
    return draw('li', {}, draw('span', {}, fault.title), draw('span', { class: 'odds-figure' }, percent(fault.probability)),
      draw('span', { class: 'odds-bar', 'aria-hidden': 'true' }, filled));
  }));
}

function row(place, ...children) {
  return draw('li', { class: 'row' }, draw('div', { class: 'margin' }, draw('span', { class: 'place' }, place)), draw('div', { class: 'body' }, children));
}

const after = point => [draw('p', { class: 'figures-line' }, `${span(point)} to the end, unit ${point.access.toLowerCase()}`), bars(point.belief, 3)];

/**
 * `ask(point)` plays a walk; `moved(point)` hears where it stands; `point` is where it begins.
 * @param {HTMLElement} root
 * @param {{ ask: (point: any) => Promise<any>, moved?: (point: any) => void, point?: any }} told
 */
export function walkPane(root, { ask, moved = () => {}, point = {} }) {
  const series = draw('select', {});
  const symptom = draw('select', {});
  const state = draw('p', { class: 'walk-state', role: 'status' });
  const rows = draw('ol', { class: 'rows walk-rows' });
  let seen = Array.isArray(point?.seen) ? point.seen : [];
  let choices = null;
  let asked = 0;
  root.replaceChildren(draw('div', { class: 'walk-start' }, draw('label', {}, 'Series', series), draw('label', {}, 'Symptom', symptom)), state, rows);

  const here = () => ({ series: series.value, symptom: symptom.value, seen });
  // The answers stay while the pages change under them: those that no longer fit are shown as such.
  const question = () => ({ ...here(), passOver: true });
  const options = (select, entries, wanted) => {
    const kept = wanted ?? select.value;
    select.replaceChildren(...entries.map(each => draw('option', { value: each.id }, each.title)));
    if (entries.some(each => each.id === kept)) select.value = kept;
    return select.value === kept || !kept;
  };

  function offer(wanted) {
    const found = options(series, choices.series, wanted?.series);
    const shown = new Set(choices.series.find(each => each.id === series.value)?.symptoms);
    return options(symptom, choices.symptoms.filter(each => shown.has(each.id)), wanted?.symptom) && found;
  }

  // A second tap on a question stands in place of the first; a tap while a save is being read counts like any other.
  function give(answer) {
    seen = [...seen.filter(each => answer.check ? each.check !== answer.check : each.repair !== answer.repair), answer];
    play(true);
  }

  const keys = option => option.check
    ? option.outcomes.map(outcome => draw('button', { type: 'button', onclick: () => give({ check: option.check, outcome: outcome.id }) },
      draw('span', {}, outcome.answer), draw('span', { class: 'odds-figure' }, percent(outcome.probability))))
    : option.repair ? [draw('button', { type: 'button', onclick: () => give({ repair: option.repair }) }, 'It did not help')] : [];
  const price = option => option.price === null ? '' : draw('p', { class: 'figures-line' }, `${minutes(option.price)} for this step, ${span(option)} to the end`);

  const byRule = moved => draw('p', { class: 'figures-line' }, `In place of “${moved.instead}”, by the rule “${moved.rule}”, for ${minutes(moved.minutes)} at most`);

  function given(step, place) {
    return row(place + 1,
      draw('p', { class: 'lead' }, step.title),
      draw('p', { class: 'pen' }, step.answer, step.chance === undefined || step.chance === null ? '' : draw('span', { class: 'figures-line' }, ` foreseen ${percent(step.chance)}`)),
      step.unfit ? draw('p', { class: 'walk-unfit' }, `Passed over: ${step.unfit}`) : after(step.after),
      draw('button', { type: 'button', class: 'quiet', 'aria-label': `Take back: ${step.title}, ${step.answer}`, onclick: () => { seen = seen.toSpliced(place, 1); play(true); } }, 'Take back'));
  }

  function next(walk) {
    const best = walk.next;
    const others = walk.options.filter(option => option.check !== best?.check || option.repair !== best?.repair);
    if (!best) return row('•', draw('p', { class: 'lead' }, 'Nothing is left to do.'));
    return row('▸',
      draw('p', { class: 'label' }, best.check ? 'Next check' : 'Next repair'), draw('p', { class: 'lead' }, best.title),
      best.ask ? draw('p', { class: 'asked' }, best.ask) : '', price(best), best.rules.map(byRule), draw('div', { class: 'walk-keys' }, keys(best)),
      others.length ? draw('details', { class: 'walk-others' }, draw('summary', {}, `Answer something else first (${others.length})`),
        others.map(option => draw('details', {}, draw('summary', {}, option.title), option.ask ? draw('p', {}, option.ask) : '', price(option), draw('div', { class: 'walk-keys' }, keys(option))))) : '');
  }

  function show(walk) {
    state.textContent = walk.steps.some(step => step.unfit) ? 'Some answers no longer fit; they are passed over.' : '';
    rows.replaceChildren(
      row('0', draw('p', { class: 'lead' }, symptom.selectedOptions[0]?.textContent ?? ''), after(walk.begin)),
      ...walk.steps.map(given), next(walk),
      row('Σ', draw('details', {}, draw('summary', {}, `All ${walk.belief.length} faults in question`), bars(walk.belief, walk.belief.length)),
        draw('p', { class: 'figures-line' }, walk.exact ? 'No plan takes fewer minutes.' : 'The first figure is what no plan stays below, the second what this plan takes.')));
  }

  async function play(byHand = false) {
    const mine = ++asked;
    moved(here());
    rows.setAttribute('aria-busy', 'true');
    try {
      const walk = await ask(question());
      if (mine !== asked) return;
      show(walk);
      if (byHand) (rows.querySelector('.walk-keys button') ?? rows.lastElementChild).scrollIntoView({ block: 'nearest' });
      if (byHand) rows.querySelector('.walk-keys')?.querySelector('button').focus({ preventScroll: true });
    } catch (problem) {
      if (mine !== asked) return;
      state.textContent = problem.message;
      rows.replaceChildren();
    } finally {
      if (mine === asked) rows.setAttribute('aria-busy', 'false');
    }
  }

  series.addEventListener('change', () => { seen = []; offer(); play(); });
  symptom.addEventListener('change', () => { seen = []; play(); });

  return {
    /** Takes series and symptoms as the pages have them now; null says that nothing can be walked. */
    take(now) {
      const wanted = choices ? here() : point;
      if (!now?.series.length) {
        asked++;
        choices ??= null;
        state.textContent = now ? 'A walk needs a series and a symptom.' : 'Nothing can be walked before the pages are free of errors.';
        rows.replaceChildren();
        return;
      }
      choices = now;
      const stays = offer(wanted);
      if (!stays) seen = [];
      play().then(() => { if (!stays) state.textContent = 'The series or symptom of this walk is not there any more: this is another one.'; });
    },
    point: here,
  };
}
