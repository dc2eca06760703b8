// The core of the conversation on this device, behind promises.
export class Engine {
  #worker = new Worker('/js/offline/engine-worker.js', { type: 'module' });
  /** @type {Map<number, { resolve: (result: any) => void, reject: (problem: Error) => void }>} */
  #asked = new Map();
  #count = 0;

  constructor() {
    this.#worker.addEventListener('message', ({ data: { id, result, problem } }) => {
      const asked = this.#asked.get(id);
      this.#asked.delete(id);
      if (problem === undefined) asked?.resolve(result);
      else asked?.reject(new Error(problem));
    });
    this.#worker.addEventListener('error', event => this.#fail(event.message ?? 'the engine did not start'));
  }

  /**
   * Starts the engine whose files lie below an address, and loads a pack of pages; gives the version of the pages.
   * @param {string} root
   * @param {ArrayBuffer} pack
   * @returns {Promise<string>}
   */
  async start(root, pack) {
    await this.#ask('start', { root });
    return this.#ask('load', { pack }, [pack]);
  }

  /** Makes it ready for free words, which takes a while: bit by bit, so that an answer given meanwhile does not wait for it. */
  async warm() {
    while (await this.#ask('warm')) continue;
  }

  /** @param {string} log all events of a case, as JSON */
  begin(log) {
    return this.#ask('begin', { log });
  }

  /**
   * @param {object} turn
   * @returns {Promise<Kept.Taken>}
   */
  async take(turn) {
    return JSON.parse(await this.takeText(turn));
  }

  /**
   * @param {object} turn
   * @returns {Promise<string>}
   */
  takeText(turn) {
    return this.#ask('take', { turn: JSON.stringify(turn) });
  }

  stop() {
    this.#worker.terminate();
    this.#fail('the engine was stopped');
  }

  /**
   * @param {string} job
   * @param {object} [given]
   * @param {Transferable[]} [moved]
   * @returns {Promise<any>}
   */
  #ask(job, given, moved = []) {
    return new Promise((resolve, reject) => {
      const id = this.#count++;
      this.#asked.set(id, { resolve, reject });
      this.#worker.postMessage({ id, job, given }, moved);
    });
  }

  /** @param {string} line */
  #fail(line) {
    for (const { reject } of this.#asked.values()) reject(new Error(line));
    this.#asked.clear();
  }
}
