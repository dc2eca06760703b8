// The field a page is written in: a plain text field over a copy of its lines, which carries their numbers in the margin and
// marks what is wrong. The copy is as tall as the text, so the field grows with it.
import { draw } from '../draw.js';

export function writingField(text, lines) {
  let shown = [];
  let marks = new Map();

  function fill(line, place) {
    const found = marks.get(place + 1) ?? [];
    line.className = `field-line${found.length ? ` ${found.some(each => each.severity === 'error') ? 'error' : 'warning'}` : ''}`;
    const words = shown[place];
    const parts = [];
    let from = 0;
    for (const { start, end } of found.filter(each => each.end > each.start).sort((one, other) => one.start - other.start)) {
      if (start < from || end > words.length) continue;
      parts.push(words.slice(from, start), draw('mark', {}, words.slice(start, end)));
      from = end;
    }
    line.replaceChildren(draw('span', {}, ...parts, words.slice(from), '\u200b'));
  }

  // Only the lines that differ are drawn again: a page may have thousands.
  function copy() {
    const now = text.value.split('\n');
    let head = 0;
    while (head < now.length && head < shown.length && now[head] === shown[head]) head++;
    let tail = 0;
    while (tail < now.length - head && tail < shown.length - head && now[now.length - 1 - tail] === shown[shown.length - 1 - tail]) tail++;
    const drawn = [...lines.children];
    for (const line of drawn.slice(head, drawn.length - tail)) line.remove();
    const fresh = now.slice(head, now.length - tail).map(() => draw('div'));
    shown = now;
    if (fresh.length) { if (head) lines.children[head - 1].after(...fresh); else lines.prepend(...fresh); }
    fresh.forEach((line, at) => fill(line, head + at));
  }

  /** Marks what is wrong; places count from the beginning of the text. */
  function mark(found) {
    const starts = [0];
    for (const line of shown) starts.push(starts.at(-1) + line.length + 1);
    const before = marks;
    marks = new Map();
    for (const each of found) {
      const line = Math.min(each.line, shown.length);
      marks.set(line, [...marks.get(line) ?? [], { severity: each.severity, start: each.start - starts[line - 1], end: each.end - starts[line - 1] }]);
    }
    for (const line of new Set([...before.keys(), ...marks.keys()])) if (lines.children[line - 1]) fill(lines.children[line - 1], line - 1);
  }

  /** Puts the cursor where something is wrong. */
  function go({ line, start, end }) {
    text.focus({ preventScroll: true });
    text.setSelectionRange(start, end);
    lines.children[Math.min(line, shown.length) - 1]?.scrollIntoView({ block: 'center' });
  }

  /** Writes as if by hand, so that it can be undone. */
  function write(start, end, words) {
    text.focus({ preventScroll: true });
    text.setSelectionRange(start, end);
    const done = words === '' ? document.execCommand('delete') : document.execCommand('insertText', false, words);
    if (done) return;
    text.setRangeText(words, start, end, 'end');
    text.dispatchEvent(new Event('input'));
  }

  return { copy, mark, go, write };
}
