// Words to say, or a link to send: whoever has them joins the case, once. And who works on it, to be taken out again.
import { draw, time } from '../draw.js';
import { offerCase, Refused, takeCodeBack, takeOut } from '../post.js';
import { twice } from '../twice.js';

const noConnection = 'No connection to the server. Try again.';
/** @param {unknown} problem */
const line = problem => draw('p', { class: 'wrong' }, problem instanceof Refused ? problem.message : noConnection);

/**
 * @param {{ code: string, link: string, until: string }} offer
 * @param {() => void} back
 */
function offered({ code, link, until }, back) {
  return [
    draw('p', { class: 'code' }, code),
    draw('p', {}, 'Say these words, or send ', draw('a', { href: link }, `${location.host}${link}`), '.'),
    draw('p', { class: 'small' }, 'They let one person who has an account here into this case, and no other, until ', time(until), '.'),
    draw('div', { class: 'acts' }, draw('button', { type: 'button', onclick: back }, 'Take the words back')),
  ];
}

/**
 * @param {HTMLElement} element
 * @param {string} id
 * @param {Told.Hand[]} people those who work on it
 * @param {() => Promise<void>} changed asks for them anew
 */
export function drawHandOver(element, id, people, changed) {
  const shown = draw('div', { role: 'status', class: 'shown' });
  /** @param {() => Promise<HTMLElement[]>} how */
  const attempt = how => async () => {
    try { shown.replaceChildren(...await how()); } catch (problem) { shown.replaceChildren(line(problem)); }
  };
  const back = attempt(async () => {
    await takeCodeBack(id);
    return [draw('p', {}, 'The words are no longer valid.')];
  });
  const offer = attempt(async () => offered(await offerCase(id), back));
  /** @param {string} name */
  const out = name => attempt(async () => {
    await takeOut(id, name);
    await changed();
    return [];
  });
  const hands = (people ?? []).map(hand => draw('li', {}, `${hand.name}, ${hand.as} `,
    twice(draw('button', { type: 'button' }, `Take ${hand.name} out`), `Yes, take ${hand.name} out`, out(hand.name))));
  element.replaceChildren(draw('p', {}, 'Somebody else can go on with this case while you stay in it. Both see each answer as it is given, and by whom.'),
    hands.length > 0 ? draw('ul', { class: 'lines' }, hands) : '',
    draw('div', { class: 'acts' }, draw('button', { type: 'button', class: 'main', onclick: offer }, 'Get words to say')), shown);
}
