// Between the page, the server and this device: where an answer goes, and what is said about the signal.
import { draw } from '../draw.js';
import { openCase, readCase, Refused, sendTurn } from '../post.js';
import { Away } from './away.js';
import * as core from './core.js';
import { crossing } from './crossing.js';
import { newId } from './name.js';
import * as notebook from './notebook.js';
import { clearOld, fetchKit, kitFor } from './shelf.js';
import { versionOf } from './turns.js';

const tryEvery = 8_000;
const patience = 5_000;
/** @param {unknown} problem */
const lost = problem => !(problem instanceof Refused) || [502, 503, 504].includes(problem.status);
/** @param {number} count */
const many = count => count === 1 ? '1 answer waits' : `${count} answers wait`;

// Not every browser says whether the person wants to save data.
const savesData = () => 'connection' in navigator && /** @type {{ saveData?: boolean }} */ (navigator.connection).saveData === true;

export class Link {
  /** @type {Away | null} */
  #opened = null;
  #timer = 0;
  /** @type {Promise<void> | null} */
  #prepared = null;
  #crossing = false;

  /**
   * @param {HTMLElement} box
   * @param {(view: Told.Case) => void} onView gets the case whenever it was brought up to date
   */
  constructor(box, onView) {
    this.box = box;
    this.onView = onView;
    addEventListener('online', () => { if (this.#opened) this.home(); });
  }

  get #away() {
    if (!this.#opened) throw new Error('no case is open');
    return this.#opened;
  }

  /**
   * Opens a case: from the server, or from this device while there is no signal.
   * @param {string | undefined} id
   * @returns {Promise<Told.Case>}
   */
  async open(id) {
    const view = id ? await this.#openKnown(id) : await this.#openNew();
    this.#opened ??= new Away(view.id);
    await this.#away.known();
    this.#show();
    return view;
  }

  async #openNew() {
    try {
      return await openCase();
    } catch (problem) {
      if (!lost(problem) || !await core.ready(null).catch(() => false)) throw problem;
      this.#opened = new Away(newId());
      return await this.#opened.begin();
    }
  }

  /** @param {string} id */
  async #openKnown(id) {
    this.#opened = new Away(id);
    const known = await this.#away.known();
    if (known && this.#away.waiting > 0) return (await this.#away.bring()) ?? known;
    try {
      return await readCase(id, known ? patience : undefined);
    } catch (problem) {
      if (!known || !lost(problem)) throw problem;
      return known;
    }
  }

  /**
   * Sends an answer; while there is no signal it is taken here.
   * @param {import('../outbox.js').Sent} turn
   */
  async deliver(turn) {
    if (this.#away.waiting > 0 && !await this.home()) return this.#here(turn);
    try {
      return await sendTurn(this.#away.id, turn);
    } catch (problem) {
      if (!lost(problem) || !await this.#away.canTake()) throw problem;
      return this.#here(turn);
    }
  }

  /** @param {import('../outbox.js').Sent} turn */
  async #here(turn) {
    const taken = await this.#away.take(turn);
    this.#show();
    return taken;
  }

  /** The case as it stands: what waits here comes after what the server has. */
  async current() {
    const known = await this.#away.known();
    if (known && this.#away.waiting > 0) return known;
    try { return await readCase(this.#away.id); } catch (problem) { if (!known) throw problem; return known; }
  }

  /**
   * Writes down a turn that was taken.
   * @param {Told.Taken} answer
   * @param {Told.Case} view
   */
  async taken(answer, view) {
    if (!answer.turn.away && !await this.#away.add(answer, view) && document.body.dataset.away === 'ready') await this.#away.follow().catch(() => {});
    if (answer.events?.some(happened => happened.event === 'content-changed')) this.#prepared = null;
    this.prepare();
    this.#show();
  }

  /** Brings waiting answers home: whether none waits any more. */
  async home() {
    if (this.#away.waiting === 0) return true;
    const count = this.#away.waiting;
    const view = await this.#away.bring();
    if (view) this.#arrived(view, `Signal is back: ${count === 1 ? '1 answer was' : `${count} answers were`} sent and saved.`);
    else this.#show();
    return this.#away.waiting === 0;
  }

  /** Keeps on this device what is needed to go on without signal; what is kept wakes up when there is none. */
  prepare() {
    if (!('caches' in globalThis)) return;
    this.#prepared ??= this.#prepare().catch(problem => {
      this.#prepared = null;
      document.body.dataset.away = 'not';
      if (problem instanceof Error && problem.name === 'QuotaExceededError') this.box.replaceChildren(draw('p', {}, 'This device has no room to keep what work without signal needs. With signal all goes on as before.'));
      this.#away.wake().catch(() => {});
    });
  }

  async #prepare() {
    if (savesData() && !await kitFor(null)) return;
    if (!await fetchKit()) return;
    await this.#away.follow();
    const version = await this.#away.version();
    if (!await kitFor(version)) return;
    document.body.dataset.away = 'ready';
    core.readySoon(version).catch(() => { document.body.dataset.away = 'not'; });
    navigator.storage?.persist?.();
    await notebook.tidy(this.#away.id);
    await clearOld((await notebook.list()).map(record => versionOf([...record.log, ...record.away])));
  }

  /**
   * @param {Told.Case} view
   * @param {string} line
   */
  #arrived(view, line) {
    this.onView(view);
    this.#show();
    this.box.replaceChildren(draw('p', {}, line));
  }

  #show() {
    clearTimeout(this.#timer);
    const { waiting, safe, crossed, held } = this.#away;
    document.body.dataset.waiting = String(waiting);
    if (crossed) this.#decide();
    else if (waiting > 0 && held) this.box.replaceChildren(draw('p', {}, draw('strong', {}, 'Not sent. '), held));
    else if (waiting > 0) {
      this.box.replaceChildren(draw('p', {}, draw('strong', {}, 'No signal. '), `The walk goes on on this device; ${many(waiting)} here to be sent.`),
        safe ? '' : draw('p', {}, draw('strong', {}, 'No room on this device: '), 'these answers are on this page only. Keep it open until signal is back.'));
      this.#timer = setTimeout(() => this.home(), tryEvery);
    } else this.box.replaceChildren();
  }

  async #decide() {
    if (this.#crossing) return;
    this.#crossing = true;
    this.box.replaceChildren(await crossing(this.#away, async view => {
      this.#crossing = false;
      this.#arrived(view, await this.#leftLine());
    }));
  }

  async #leftLine() {
    const left = (await notebook.read(this.#away.id))?.left ?? [];
    return left.length === 0
      ? 'The sheet is as the server has it.'
      : `Not written, because something else is asked now: ${left.map(words => `“${words}”`).join(', ')}.`;
  }
}
