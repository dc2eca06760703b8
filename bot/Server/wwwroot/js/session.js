// Who is signed in, at the head of every page; nothing while there are no accounts.
import { draw } from './draw.js';
import { keepHolder } from './offline/holder.js';
import { readSession, signOut, writesOnly } from './post.js';

const links = document.querySelector('.frame-links');

async function leave() {
  await signOut();
  keepHolder(null);
  location.assign('/sign-in');
}

try {
  const session = await readSession();
  keepHolder((session.accounts && session.name) || null);
  if (!links) { /* a page without a head */ }
  else if (session.accounts && session.name) {
    // The work list is the desk's; a page may bring the link before it is known who looks.
    if (!session.roles.some(role => role === 'desk' || role === 'administrator'))
      for (const link of links.querySelectorAll('a[href="/work"]:not([id])')) link.remove();
    // Neither are job sheets for who only writes pages.
    if (writesOnly(session)) {
      for (const link of links.querySelectorAll('a[href="/"], a[href="/cases"]')) link.remove();
      if (location.pathname === '/') location.replace('/pages');
    }
    if (session.roles.some(role => role === 'author' || role === 'administrator') && !links.querySelector('a[href="/pages"]')) links.append(draw('a', { href: '/pages' }, 'Pages'));
    if (session.roles.includes('administrator')) links.append(draw('a', { href: '/accounts' }, 'Accounts'));
    links.append(draw('button', { type: 'button', onclick: leave }, `Sign out ${session.name}`));
  }
  // Without accounts this machine's own user writes too; a job sheet is left as it is.
  else if (!session.accounts && location.pathname === '/work') links.prepend(draw('a', { href: '/pages' }, 'Pages'));
} catch { /* offline: the page goes on without */ }
