// The page reads aloud and listens, by what the browser has for it. Both are off until they are switched on.
import { settings } from './settings.js';

/** @type {(new () => Listening) | undefined} */
const Recognition = Reflect.get(globalThis, 'SpeechRecognition') ?? Reflect.get(globalThis, 'webkitSpeechRecognition');

export const canListen = Boolean(Recognition);
export const canRead = 'speechSynthesis' in globalThis;

/**
 * @typedef {{ abort(): void, start(): void, onresult: ((event: { results: { transcript: string }[][] }) => void) | null, onerror: (() => void) | null,
 *   onend: (() => void) | null }} Listening
 */
/** @type {Listening | null} */
let listening = null;

/**
 * Listens once: what was heard; empty when nothing was.
 * @returns {Promise<string>}
 */
export function listen() {
  listening?.abort();
  return new Promise(resolve => {
    let heard = '';
    if (!Recognition) return resolve('');
    listening = new Recognition();
    Object.assign(listening, { lang: document.documentElement.lang || 'en', interimResults: false, maxAlternatives: 1 });
    listening.onresult = event => { heard = event.results[0][0].transcript; };
    listening.onerror = () => resolve('');
    listening.onend = () => resolve(heard);
    listening.start();
  });
}

export function stop() {
  listening?.abort();
  if (canRead) speechSynthesis.cancel();
}

/** @param {string} text */
function read(text) {
  return new Promise(resolve => {
    const spoken = new SpeechSynthesisUtterance(text);
    Object.assign(spoken, { lang: document.documentElement.lang || 'en', onend: resolve, onerror: resolve });
    speechSynthesis.speak(spoken);
  });
}

/** Reads a reply aloud where that is switched on. @returns what was said to it after; empty when nothing was, or none was asked for. */
export async function aloud(/** @type {Told.Reply} */ reply) {
  if (!canRead || !settings.get('aloud')) return '';
  speechSynthesis.cancel();
  /** @param {Told.Segment} segment */
  const of = segment => segment.kind === 'caution' ? `Caution: ${segment.text}` : segment.text;
  await read(reply.segments.map(of).join(' '));
  return canListen && settings.get('listen') ? listen() : '';
}
