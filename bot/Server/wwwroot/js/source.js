// Where a line comes from, shown on demand.
import { draw } from './draw.js';

const origins = {
  page: from => `Page ${from.path}, “${from.heading}”`,
  phrase: from => `Phrase “${from.id}”`,
  calculation: from => `Calculation “${from.name}”${from.source ? `, ${from.source}` : ''}`,
  person: () => 'Your own words',
};

export function sourceNote(segment) {
  const text = segment.from.map(from => (origins[from.origin] ?? (() => 'Unknown'))(from)).join(' · ');
  return draw('small', { class: 'source' }, text);
}

export function sourceSwitch(row, number) {
  const button = draw('button', {
    type: 'button', class: 'quiet', 'aria-expanded': 'false', 'aria-label': `Sources of line ${number}`,
    onclick: () => {
      const shown = row.classList.toggle('with-sources');
      button.setAttribute('aria-expanded', String(shown));
      button.textContent = shown ? 'Hide sources' : 'Sources';
    },
  }, 'Sources');
  return button;
}
