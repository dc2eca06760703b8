// The photos of a job. The device makes a smaller copy without place and camera before it is sent; the server cleans it again.
import { draw } from '../draw.js';
import { addPhoto, Refused } from '../post.js';
import { twice } from '../twice.js';

/** @type {Record<string, string>} */
const shows = { nameplate: 'Nameplate', wiring: 'Wiring', part: 'Part', site: 'Site', other: 'Other' };
const longest = 2000;

// What cannot be drawn is sent as it is, and the server says what is wrong with it.
/** @param {File} file */
async function smaller(file) {
  try {
    const picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
    const scale = Math.min(1, longest / Math.max(picture.width, picture.height));
    const canvas = new OffscreenCanvas(Math.round(picture.width * scale), Math.round(picture.height * scale));
    canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
    return await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.85 });
  } catch {
    return file;
  }
}

/**
 * @param {Told.JobPhoto} photo
 * @param {Told.Job} view
 * @param {import('./fields.js').Save} save
 */
function card(photo, view, save) {
  const name = `${shows[photo.shows] ?? photo.shows}, unit ${photo.unit}`;
  const gone = () => picture.replaceWith(draw('p', { class: 'gone' }, 'This photo was removed.'));
  const picture = draw('img', { src: `/api/cases/${encodeURIComponent(view.case)}/photos/${photo.hash}`, alt: name, loading: 'lazy', onerror: gone });
  return draw('figure', {}, picture, draw('figcaption', {}, name, draw('span', { class: 'hash' }, photo.hash.slice(0, 12)),
    twice(draw('button', { type: 'button', class: 'quiet' }, 'Remove'), 'Remove for good', () => save({ dropPhoto: photo.hash }))));
}

/**
 * @param {Told.Job} view
 * @param {() => Promise<void>} again
 */
function photoForm(view, again) {
  const what = draw('select', { id: 'photo-shows' }, Object.entries(shows).map(([value, text]) => draw('option', { value }, text)));
  const wrong = draw('p', { class: 'wrong', role: 'alert' });
  const input = draw('input', { id: 'photo-file', type: 'file', accept: 'image/jpeg,image/png,image/webp' });
  input.addEventListener('change', async () => {
    const chosen = input.files?.[0];
    if (!chosen) return;
    wrong.replaceChildren();
    input.disabled = true;
    try {
      await addPhoto(view.case, await smaller(chosen), { turnId: crypto.randomUUID(), shows: what.value, unit: String(view.job.atHand) });
      await again();
    } catch (problem) {
      wrong.replaceChildren(problem instanceof Refused ? problem.message : 'No connection to the server. The photo was not kept; try again.');
      input.disabled = false;
      input.value = '';
    }
  });
  return draw('form', {}, draw('label', {}, 'What it shows', what), draw('label', {}, 'Take or choose a photo', input), wrong);
}

/**
 * @param {HTMLElement} element
 * @param {Told.Job} view
 * @param {import('./fields.js').Save} save
 * @param {() => Promise<void>} again
 */
export function drawPhotos(element, view, save, again) {
  element.replaceChildren(draw('div', { class: 'photos' }, view.job.photos.map(photo => card(photo, view, save))), photoForm(view, again));
}
