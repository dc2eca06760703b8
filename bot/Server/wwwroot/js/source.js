// Where a line comes from, shown on demand.
import { draw } from './draw.js';

const origins = {
  page: from => `Page ${from.path}, “${from.heading}”`,
  phrase: from => `Phrase “${from.id}”`,
  calculation: from => `Calculation “${from.name}”${from.source ? `, ${from.source}` : ''}`,
  person: () => 'Your own words',
};

/** @param {Told.Segment} segment */
export function sourceNote(segment) {
  const text = segment.from.map(from => (origins[from.origin] ?? (() => 'Unknown'))(from)).join(' · ');
  return draw('small', { class: 'source' }, text);
}

export function sourceSwitch(row, number) {
  const button = draw('button', {
    type: 'button', class: 'quiet', 'aria-expanded': 'false',
    onclick: () => button.setAttribute('aria-expanded', String(row.classList.toggle('with-sources'))),
  }, 'Sources', draw('span', { class: 'unseen' }, ` of line ${number}`));
  return button;
}
