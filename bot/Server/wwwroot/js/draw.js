// Makes elements. Text goes in as text only, so nothing that was said can become markup.
export function draw(tag, properties = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(properties)) {
    if (value === undefined || value === null || value === false) continue;
    if (name === 'class') element.className = value;
    else if (name.startsWith('on')) element.addEventListener(name.slice(2), value);
    else element.setAttribute(name, value === true ? '' : value);
  }
  element.append(...children.flat(Infinity).filter(child => child !== null && child !== undefined && child !== ''));
  return element;
}

export function time(iso) {
  const at = new Date(iso);
  return draw('time', { datetime: iso, title: at.toLocaleString() },
    at.toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' }));
}

export function day(iso) {
  return draw('time', { datetime: iso },
    new Date(iso).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' }));
}
