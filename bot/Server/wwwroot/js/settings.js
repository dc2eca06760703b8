// How the page looks and speaks on this device. All are off until they are switched on.
const held = new Map();

export const settings = {
  /** @param {string} name */
  get(name) {
    try { return localStorage.getItem(`setting ${name}`) === 'on'; } catch { return held.get(name) === true; }
  },
  /**
   * @param {string} name
   * @param {boolean} on
   */
  set(name, on) {
    held.set(name, on);
    try { localStorage.setItem(`setting ${name}`, on ? 'on' : 'off'); } catch { /* a private window: for this page only */ }
    if (name === 'sun') document.documentElement.toggleAttribute('data-sun', on);
  },
};
