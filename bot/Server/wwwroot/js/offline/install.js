// Lets the service worker keep the pages of the program. New ones take over between cases only.
/** @param {boolean} isBetweenCases */
export async function keepPages(isBetweenCases) {
  if (!('serviceWorker' in navigator)) return;
  try {
    const registration = await navigator.serviceWorker.register('/sw.js', { updateViaCache: 'none' });
    if (isBetweenCases) registration.waiting?.postMessage('take over');
    await navigator.serviceWorker.ready;
    document.body.dataset.kept = 'yes';
  } catch { /* a private window: the page works as long as there is signal */ }
}
