// What can be asked of the conversation at any time: the fitting ones first, the rest behind one button.
import { draw } from './draw.js';
import { twice } from './twice.js';

/** @type {Record<string, string>} */
const labels = {
  back: 'Back', why: 'Why this?', skip: 'Skip', unsure: 'Not sure', cannot: 'Cannot do that here',
  again: 'Say it again', help: 'Help', 'stop-here': 'Stop here', 'start-over': 'Start over',
};

/**
 * @param {Told.Question | null} question
 * @param {import('./slip.js').Send} send
 */
export function commands(question, send) {
  /** @param {string} word */
  const button = word => {
    const made = draw('button', { type: 'button', class: 'command', 'data-command': word }, labels[word]);
    const press = () => send({ answer: { command: word } }, labels[word]);
    if (word === 'start-over') return twice(made, 'Yes, start over', press); // the one that "back" does not undo
    made.addEventListener('click', press);
    return made;
  };
  const fitting = (question?.commands ?? []).map(String).filter(word => word in labels && word !== 'start-over' && word !== 'help' && word !== 'again');
  const rest = Object.keys(labels).filter(word => !fitting.includes(word));
  return draw('div', { class: 'commands' },
    fitting.map(button),
    draw('details', { class: 'more' }, draw('summary', {}, 'More'), draw('div', { class: 'more-list' }, rest.map(button))));
}
