// One turn that is on its way. It is kept in the browser until the server has acknowledged it, and sent again under the
// same id, so that a lost answer is never a second turn.
import { Refused } from './post.js';

const pauses = [1, 2, 4, 8, 15, 30];

/**
 * @typedef {{ turnId: string } & Said.Body} Sent
 * @typedef {{ shown: string, turn: Sent }} Waiting
 */
export class Outbox {
  /**
   * @param {string} caseId
   * @param {{ deliver: (turn: Sent) => Promise<Told.Taken>, onWaiting: (line: string, seconds: number) => void, onTaken: (taken: Told.Taken) => void,
   *   onRefused: (line: string, waiting: Waiting) => void }} given
   */
  constructor(caseId, { deliver, onWaiting, onTaken, onRefused }) {
    this.deliver = deliver;
    this.onWaiting = onWaiting;
    this.onTaken = onTaken;
    this.onRefused = onRefused;
    /** @type {Waiting | null} */
    this.held = null;
    this.tries = 0;
    this.timer = 0;
    this.busy = false;
    this.key = `turn of ${caseId}`;
    addEventListener('online', () => this.flush());
  }

  /** @returns {Waiting | null} */
  get waiting() {
    try { return JSON.parse(localStorage.getItem(this.key) ?? 'null') ?? this.held ?? null; } catch { return this.held ?? null; }
  }

  /**
   * @param {Said.Body} body
   * @param {string} shown
   */
  put(body, shown) {
    if (this.waiting) return;
    this.held = { shown, turn: { turnId: crypto.randomUUID(), ...body } };
    try { localStorage.setItem(this.key, JSON.stringify(this.held)); } catch { /* private window: kept in memory */ }
    this.tries = 0;
    this.flush();
  }

  drop() {
    this.held = null;
    try { localStorage.removeItem(this.key); } catch { /* as above */ }
  }

  async flush() {
    clearTimeout(this.timer);
    const waiting = this.waiting;
    if (!waiting || this.busy) return;
    this.busy = true;
    try {
      const taken = await this.deliver(waiting.turn);
      this.drop();
      this.onTaken(taken);
    } catch (trouble) {
      this.fail(trouble, waiting);
    } finally {
      this.busy = false;
    }
  }

  /**
   * @param {unknown} trouble
   * @param {Waiting} waiting
   */
  fail(trouble, waiting) {
    const final = trouble instanceof Refused && trouble.status !== 503;
    if (final) {
      this.drop();
      this.onRefused(trouble.message, waiting);
      return;
    }
    const pause = pauses[Math.min(this.tries++, pauses.length - 1)];
    this.onWaiting(trouble instanceof Refused ? trouble.message : 'No connection to the server.', pause);
    this.timer = setTimeout(() => this.flush(), pause * 1000);
  }
}
