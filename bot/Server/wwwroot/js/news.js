// Word of what others did with a case. It comes while the page is looked at; a page in the background keeps no connection.
export class News {
  /** @type {EventSource | null} */
  #source = null;

  /**
   * Hears the last number of the log whenever it grew.
   * @param {string} id
   * @param {(last: number) => void} heard
   */
  constructor(id, heard) {
    this.address = `/api/cases/${encodeURIComponent(id)}/changes`;
    this.heard = heard;
    document.addEventListener('visibilitychange', () => this.listen());
    addEventListener('online', () => this.listen());
    this.listen();
  }

  /** Begins anew where it ended, as for a case that the server did not know yet. */
  listen() {
    if (document.hidden) {
      this.#source?.close();
      this.#source = null;
    } else if (!this.#source || this.#source.readyState === EventSource.CLOSED) {
      this.#source = new EventSource(this.address);
      this.#source.addEventListener('message', ({ data }) => this.heard(Number(data)));
    }
  }
}
