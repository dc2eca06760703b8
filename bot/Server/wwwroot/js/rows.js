// Turns of a case, as rows of the sheet. A row is one question, what was said to it, and what came of that.
const asking = new Set(['caution', 'instruction', 'question', 'repair', 'advice']);

/** @typedef {{ question: Told.Question | null, lead: Told.Segment[], ask: Told.Segment[], exchanges: Exchange[] }} Row */
/** @typedef {{ turn: Told.Turn, said?: string, results: Told.Segment[] }} Exchange */

// A lead names the next step; by its phrase it is told from a notice about the last answer.
/** @param {Told.Segment} segment */
export const isLead = segment => segment.from.some(from => from.origin === 'phrase' && from.id.endsWith('-lead'));

// What a reply says about the last answer, and what it asks next, in reading order.
/** @param {Told.Reply} reply */
export function split(reply) {
  const at = reply.segments.findIndex(segment => asking.has(segment.kind) || isLead(segment));
  const end = at < 0 ? reply.segments.length : at;
  return { results: reply.segments.slice(0, end), ask: reply.segments.slice(end) };
}

// A question that is only asked again, after "why" or words that were not understood, stays in its row.
/**
 * @param {Row} row
 * @param {Told.Question | null} question
 * @param {Told.Segment[]} ask
 */
function asksAgain(row, question, ask) {
  if (!row.question || !question) return false;
  const same = row.question.kind === question.kind && row.question.subject === question.subject && row.question.text === question.text;
  const shown = new Set(row.ask.map(segment => segment.text));
  return same && ask.every(segment => shown.has(segment.text));
}

/** @param {Told.Turn[]} turns */
export function rowsOf(turns) {
  /** @type {Row[]} */
  const rows = [];
  for (const turn of turns) {
    const row = rows.at(-1);
    const question = turn.reply.question ?? null;
    const { results, ask } = split(turn.reply);
    if (row) row.exchanges.push({ turn, said: turn.said, results });
    if (row && asksAgain(row, question, ask)) {
      row.question = question;
      continue;
    }
    rows.push({ question, lead: row ? [] : results, ask, exchanges: [] });
  }
  return rows;
}

// Cautions of one page belong together, in one box.
/** @param {Told.Segment[]} segments */
export function cautionsOf(segments) {
  /** @type {{ page: string, segments: Told.Segment[] }[]} */
  const boxes = [];
  for (const segment of segments.filter(one => one.kind === 'caution')) {
    const page = pageOf(segment);
    const box = boxes.at(-1);
    if (box?.page === page) box.segments.push(segment);
    else boxes.push({ page, segments: [segment] });
  }
  return boxes;
}

/** @param {Told.Segment} segment */
export const pageOf = segment => segment.from.find(from => from.origin === 'page')?.path ?? segment.text;
