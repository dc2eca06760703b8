// Who holds this device, as the server last said it: answers taken without signal bear that name.
const place = 'holder';
const nameless = 'technician';

export function holder() {
  try { return localStorage.getItem(place) ?? nameless; } catch { return nameless; }
}

/** @param {string | null} name */
export function keepHolder(name) {
  try {
    if (name) localStorage.setItem(place, name);
    else localStorage.removeItem(place);
  } catch { /* private window: nameless, and whoever sends them signs them */ }
}
