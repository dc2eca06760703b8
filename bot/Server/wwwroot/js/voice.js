// Reads new lines aloud, once, through a live region. The question itself is read by moving the focus to it.
import { at } from './draw.js';

/** @param {{ kind: Told.SegmentKind, text: string }[]} segments */
export function speak(segments) {
  const text = segments.filter(segment => segment.kind !== 'question').map(segment =>
    segment.kind === 'caution' ? `Caution: ${segment.text}` : segment.text).join(' ');
  const line = document.createElement('p');
  line.textContent = text;
  at('voice').replaceChildren(line);
}
