// The summary of a sheet as plain lines, handed to another app of this device, or to be pasted where there is none for it.
import { number } from './sheet.js';

/** @param {Told.SummedCheck} check */
function found({ answer, figures }) {
  if (!figures) return answer;
  const read = figures.readings.map(reading => `${reading.label} ${reading.value}`.trim()).join(', ');
  const expected = figures.expected.length > 0 ? `, expected ${figures.expected.join(', ')}` : '';
  return `${read}${expected}: ${figures.verdict}`;
}

/** @param {Told.Made} made */
export const tried = made => made.beside ? `put right; ${made.beside} shows another fault` : made.works === true ? 'the unit works' : made.works === false ? 'did not cure it' : 'not tried out yet';

/** @param {Told.Part} part */
const partLines = part => [
  part.shows.length > 0 ? `Shows: ${part.shows.join('; ')}` : '',
  ...part.checks.map((check, place) => `${place + 1}. ${check.title}: ${found(check)}`),
  `Fault proven: ${part.proven ?? (part.ended ? 'none' : 'none yet')}`,
  part.inQuestion.length > 0 ? `Still in question: ${part.inQuestion.join('; ')}` : '',
  ...part.repairs.map(made => `Repair: ${made.title}: ${tried(made)}`),
];

/** @param {Told.Summary} summary */
export const plainLines = summary => [
  `Job sheet ${number(summary.id)}`, summary.head.unit ? `Unit: ${summary.head.unit}` : '', ...summary.parts.flatMap(partLines),
].filter(line => line !== '').join('\n');

/**
 * What is said about it afterwards; nothing when another app took it.
 * @param {Told.Summary} summary
 */
export async function share(summary) {
  const text = plainLines(summary);
  try {
    if (navigator.share) await navigator.share({ title: `Job sheet ${number(summary.id)}`, text });
    else {
      await navigator.clipboard.writeText(text);
      return 'The summary is copied: paste it where it is wanted.';
    }
  } catch (problem) {
    if (!(problem instanceof Error && problem.name === 'AbortError')) return 'This browser shares nothing. Print the sheet instead.';
  }
  return '';
}
