// A case while there is no signal: it goes on here, its answers wait here, and they are brought home in order.
import { bringTurns, readCase, readLog, Refused } from '../post.js';
import * as core from './core.js';
import { holder } from './holder.js';
import * as notebook from './notebook.js';
import { answerOf, sent, shown, versionOf } from './turns.js';

const attempts = 5;

/** @type {(id: string) => Kept.Case} */
const blank = id => ({ id, basis: 0, log: [], away: [], left: [], view: null });

// A copy on a sheet of its own is written by whoever makes it, whoever said it first.
/** @param {Kept.Turn} turn */
const signed = ({ turnId, events }) => ({ turnId, events: events.map(happened => happened.event === 'said' ? { ...happened, by: holder() } : happened) });

export class Away {
  /** @type {409 | 410 | 422 | null} */
  crossed = null;
  safe = true;
  /** @type {string | null} */
  held = null;

  /** @param {string} id */
  constructor(id) {
    this.id = id;
    this.waiting = 0;
  }

  /** Writes down what the server has of the case. Read again when it went on between view and log. */
  follow() {
    return this.#change(async record => {
      for (let attempt = 0; attempt < attempts && record.away.length === 0; attempt++) {
        const [view, log] = [await readCase(this.id), await readLog(this.id)];
        if (log.last !== view.last) continue;
        Object.assign(record, { basis: log.last, log: log.turns, view });
        return;
      }
    });
  }

  /**
   * Writes down a turn that the server took: whether it follows what is known here.
   * @param {Told.Taken} taken
   * @param {Told.Case} view
   */
  async add({ turn, last, events }, view) {
    let follows = false;
    await this.#change(record => {
      follows = record.away.length === 0 && record.view !== null && record.basis === turn.before && last === turn.last;
      if (!follows) return;
      record.log.push({ turnId: turn.turnId, events });
      Object.assign(record, { basis: last, view });
    });
    return follows;
  }

  /** The case as this device knows it; null when it does not. */
  async known() {
    const record = await notebook.read(this.id);
    this.waiting = record?.away.length ?? 0;
    return record?.view ?? null;
  }

  /** Begins a case that the server has not heard of. */
  async begin() {
    const record = blank(this.id);
    const taken = await core.take(record, { turnId: 'opening', by: holder(), opening: true });
    const turn = shown(taken, 0);
    const view = { id: this.id, openedAt: turn.at, contentVersion: taken.version, last: turn.last, head: taken.head, turns: [turn] };
    await this.#write({ ...record, away: [{ turnId: 'opening', events: taken.events }], view });
    return view;
  }

  /** Whether a turn can be taken here: the engine is kept, and the case is known. */
  async canTake() {
    return Boolean(await notebook.read(this.id)) && core.ready(await this.version()).catch(() => false);
  }

  /** Readies this device for the next turn, if it knows the case and has kept the engine. */
  async wake() {
    const record = await notebook.read(this.id);
    if (record?.view) await core.wake(record);
  }

  /**
   * Takes a turn here. Taken again, it is the same turn.
   * @param {{ turnId: string } & Said.Body} request
   * @returns {Promise<Told.Taken>}
   */
  take(request) {
    return notebook.alone(this.id, async () => {
      const record = await this.#whole();
      const before = record.view.turns.find(turn => turn.turnId === request.turnId);
      if (before) return { turn: before, last: record.view.last, head: record.view.head, events: [] };
      const taken = await core.take(record, { ...request, by: holder() });
      const turn = { ...shown(taken, record.view.last), request };
      record.away.push({ turnId: turn.turnId, events: taken.events, request });
      record.view = { ...record.view, contentVersion: taken.version, last: turn.last, head: taken.head, turns: [...record.view.turns, turn] };
      await this.#write(record);
      return answerOf(turn, taken);
    });
  }

  /**
   * Brings the waiting answers home: the case as the server has it now; null while some wait.
   * @returns {Promise<Told.Case | null>}
   */
  bring() {
    return notebook.alone(this.id, async () => {
      const record = await notebook.read(this.id);
      if (!record || this.crossed) return null;
      if (record.away.length === 0) return this.#broughtElsewhere(record);
      try {
        await bringTurns(this.id, record.basis, record.away.map(sent));
      } catch (problem) {
        if (problem instanceof Refused && (problem.status === 409 || problem.status === 410 || problem.status === 422)) this.crossed = problem.status;
        this.held = problem instanceof Refused && problem.status === 403 ? problem.message : null;
        return null;
      }
      const view = await readCase(this.id);
      const log = await readLog(this.id);
      await this.#write({ ...record, basis: log.last, log: log.turns, away: [], view });
      return view;
    });
  }

  /** What was answered here and waits. */
  async answers() {
    return (await notebook.read(this.id))?.view?.turns.filter(turn => turn.away) ?? [];
  }

  /** The whole case as it stands here, to be put on a sheet of its own. */
  async whole() {
    const record = await this.#whole();
    return [...record.log, ...record.away].map(sent).map(signed);
  }

  /**
   * Goes on from what the server has; the answers that waited are given up.
   * @param {Told.Case} view
   * @param {string[]} [left]
   */
  async yield(view, left = []) {
    const log = await readLog(this.id);
    await this.#write({ ...await this.#whole(), basis: log.last, log: log.turns, away: [], left, view });
    this.crossed = null;
  }

  /** The version of the pages that this case stands on. */
  async version() {
    const record = await notebook.read(this.id);
    return record ? versionOf([...record.log, ...record.away]) : null;
  }

  /** @returns {Promise<Kept.Whole>} */
  async #whole() {
    const record = await notebook.read(this.id);
    if (!record?.view) throw new Error('this device does not know the case');
    return { ...record, view: record.view };
  }

  // Another window of this device was faster.
  /** @param {Kept.Case} record */
  #broughtElsewhere(record) {
    const had = this.waiting;
    this.waiting = 0;
    return had > 0 ? record.view : null;
  }

  /** @param {(record: Kept.Case) => void | Promise<void>} how */
  #change(how) {
    return notebook.alone(this.id, async () => {
      const record = (await notebook.read(this.id)) ?? blank(this.id);
      await how(record);
      if (record.view) await this.#write(record);
    });
  }

  /** @param {Kept.Case} record */
  async #write(record) {
    this.safe = await notebook.write(record);
    this.waiting = record.away.length;
  }
}
