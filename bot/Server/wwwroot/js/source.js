// Where a line comes from, shown on demand.
import { draw } from './draw.js';

/** @type {{ [Kind in Told.Origin['origin']]: (from: Extract<Told.Origin, { origin: Kind }>) => string }} */
const origins = {
  page: from => `Page ${from.path}, “${from.heading}”`,
  phrase: from => `Phrase “${from.id}”`,
  calculation: from => `Calculation “${from.name}”${from.source ? `, ${from.source}` : ''}`,
  person: () => 'Your own words',
};

/** @param {Told.Segment} segment */
export function sourceNote(segment) {
  /** @param {Told.Origin} from */
  const say = from => /** @type {(from: Told.Origin) => string} */ (origins[from.origin] ?? (() => 'Unknown'))(from);
  const text = segment.from.map(say).join(' · ');
  return draw('small', { class: 'source' }, text);
}

/**
 * @param {HTMLElement} row
 * @param {number} number
 */
export function sourceSwitch(row, number) {
  const button = draw('button', {
    type: 'button', class: 'quiet', 'aria-expanded': 'false',
    onclick: () => button.setAttribute('aria-expanded', String(row.classList.toggle('with-sources'))),
  }, 'Sources', draw('span', { class: 'unseen' }, ` of line ${number}`));
  return button;
}
