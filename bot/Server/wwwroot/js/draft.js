// What is typed and not sent yet. It outlives a reload, and a sheet that is drawn anew because somebody else answered.
const fields = 'input[id]';

/**
 * @typedef {{ id: string, label: string, value: string }} Typed
 * @typedef {{ question: string | null, typed: Typed[] } | null} Unsent
 */
export class Draft {
  /** @type {Unsent} */
  #kept;

  /**
   * @param {string} id
   * @param {HTMLElement} slip
   */
  constructor(id, slip) {
    this.key = `draft of ${id}`;
    this.slip = slip;
    /** @type {string | null} */
    this.question = null;
    try { this.#kept = JSON.parse(sessionStorage.getItem(this.key) ?? 'null'); } catch { this.#kept = null; }
    slip.addEventListener('input', () => this.#keep());
  }

  /**
   * Puts back what was typed to this question.
   * @returns readings that were typed to an earlier one; plain words go on.
   * @param {string | null} question
   */
  put(question) {
    this.question = question;
    const kept = this.#kept;
    if (!kept) return null;
    if (kept.question === question) {
      for (const { id, value } of kept.typed) this.#field(id, value);
      return null;
    }
    const words = kept.typed.find(field => field.id === 'words');
    if (words) this.#field('words', words.value);
    const readings = kept.typed.filter(field => field.id !== 'words').map(field => `${field.label} ${field.value}`.trim()).join(', ');
    this.#keep();
    return readings || null;
  }

  drop() {
    this.#kept = null;
    try { sessionStorage.removeItem(this.key); } catch { /* nothing was kept */ }
  }

  /**
   * @param {string} id
   * @param {string} value
   */
  #field(id, value) {
    const field = this.slip.querySelector(`#${CSS.escape(id)}`);
    if (field instanceof HTMLInputElement && field.value === '') field.value = value;
  }

  #keep() {
    /** @type {NodeListOf<HTMLInputElement>} */
    const inputs = this.slip.querySelectorAll(fields);
    const typed = [...inputs].filter(field => field.value.trim() !== '' && field.value !== field.defaultValue)
      .map(field => ({ id: field.id, label: field.dataset.label ?? '', value: field.value }));
    this.#kept = typed.length === 0 ? null : { question: this.question, typed };
    try {
      if (this.#kept) sessionStorage.setItem(this.key, JSON.stringify(this.#kept));
      else sessionStorage.removeItem(this.key);
    } catch { /* private window: kept in memory */ }
  }
}
