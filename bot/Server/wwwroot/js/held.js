// What is drawn anew loses the focus that stood in it. It then goes to the heading of that part, so that it is never lost.

/** @returns {() => void} puts the focus back, once all is drawn */
export function held() {
  const part = document.activeElement?.closest('section, .change, main');
  return () => {
    /** @type {(HTMLElement | null | undefined)[]} */
    const places = part ? [part.querySelector('h2'), /** @type {HTMLElement} */ (part), part.closest('main')] : [];
    for (const place of places) {
      if (!place || document.activeElement !== document.body) continue;
      place.tabIndex = -1;
      place.focus();
    }
  };
}
