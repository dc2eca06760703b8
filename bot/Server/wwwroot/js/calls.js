// Calls put aside, as lines that lead to them; those that are overdue stand out.
import { day, draw } from './draw.js';
import { number } from './sheet.js';

/** @param {Told.Slip} slip */
const isLate = slip => slip.due !== undefined && new Date(slip.due) < new Date();

/** @param {Told.Slip} slip */
const line = slip => draw('li', { class: isLate(slip) ? 'late' : '' },
  draw('a', { href: `/case/${encodeURIComponent(slip.case)}/call` }, [slip.caller, slip.phone].filter(Boolean).join(', ') || `Sheet ${number(slip.case)}`),
  slip.due ? [isLate(slip) ? ' overdue since ' : ' ', day(slip.due)] : ' as soon as can be');

/**
 * @param {HTMLElement} list
 * @param {Told.Slip[]} slips
 */
export const drawCalls = (list, slips) => list.replaceChildren(...slips.map(line));
