// A picture in a frame that scrolls: its size follows buttons, keys, the wheel and two fingers.
const least = 1;
const most = 8;
const step = 1.25;
const readable = 700;

export function zoomed(paper) {
  let times = 1;
  let spread = null;

  // What stood at a place of the frame stays there.
  function to(wantedTimes, x = paper.clientWidth / 2, y = paper.clientHeight / 2) {
    const next = Math.min(most, Math.max(least, wantedTimes));
    const left = (paper.scrollLeft + x) * next / times - x;
    const top = (paper.scrollTop + y) * next / times - y;
    times = next;
    paper.style.setProperty('--times', String(times));
    paper.scrollTo({ left, top, behavior: 'instant' });
  }

  const placeOf = event => {
    const frame = paper.getBoundingClientRect();
    return [event.clientX - frame.left, event.clientY - frame.top];
  };
  const middle = touches => ({
    clientX: (touches[0].clientX + touches[1].clientX) / 2, clientY: (touches[0].clientY + touches[1].clientY) / 2,
  });
  const distance = touches => Math.hypot(touches[0].clientX - touches[1].clientX, touches[0].clientY - touches[1].clientY);

  const zoom = {
    in: () => to(times * step),
    out: () => to(times / step),
    whole: () => to(1),
    // On a phone the whole width is too small to read; begin at a size that is not.
    legible: () => {
      to(Math.max(1, readable / paper.clientWidth));
      paper.scrollTo({ left: 0, top: 0, behavior: 'instant' });
    },
  };

  paper.addEventListener('keydown', event => {
    const act = { '+': 'in', '=': 'in', '-': 'out', 0: 'whole' }[event.key];
    if (!act || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    zoom[act]();
  });
  paper.addEventListener('wheel', event => {
    if (!event.ctrlKey && !event.metaKey) return;
    event.preventDefault();
    to(times * Math.exp(-Math.sign(event.deltaY) * Math.min(Math.abs(event.deltaY), 100) / 450), ...placeOf(event));
  }, { passive: false });
  paper.addEventListener('touchmove', event => {
    if (event.touches.length !== 2) return;
    event.preventDefault();
    const now = distance(event.touches);
    if (spread !== null) to(times * now / spread, ...placeOf(middle(event.touches)));
    spread = now;
  }, { passive: false });
  for (const ends of ['touchend', 'touchcancel']) paper.addEventListener(ends, () => { spread = null; });
  return zoom;
}
