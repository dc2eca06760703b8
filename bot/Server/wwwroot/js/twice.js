// What cannot be undone takes a second press, on a button that then says what it will do; leaving it makes the first press void.

/**
 * @template {HTMLButtonElement} Button
 * @param {Button} button
 * @param {string} sure what the second press does
 * @param {() => void} act
 * @param {() => boolean} needed false where there is nothing to lose just now
 * @returns {Button}
 */
export function twice(button, sure, act, needed = () => true) {
  const [shown, label] = [button.textContent, button.getAttribute('aria-label')];
  /** @param {boolean} asked */
  const ask = asked => {
    button.toggleAttribute('data-sure', asked);
    button.textContent = asked ? sure : shown;
    if (label) button.setAttribute('aria-label', asked ? label.replace(shown ?? '', sure) : label);
  };
  button.setAttribute('aria-live', 'polite');
  button.addEventListener('blur', () => ask(false));
  button.addEventListener('click', event => {
    if (event.detail > 1) return; // the second half of a double tap is no second thought
    const isSure = !needed() || button.hasAttribute('data-sure');
    ask(!isSure);
    if (isSure) act();
  });
  return button;
}
