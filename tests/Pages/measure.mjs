// Loads pages as a phone on a slow line would, and prints what that comes to: measure.mjs CHROMIUM ADDRESS...
// Each line is the address and, out of 100, performance, accessibility and best practices; then what fell short.
import { launch } from 'chrome-launcher';
import lighthouse from 'lighthouse';

const [chromePath, ...addresses] = process.argv.slice(2);
const kinds = ['performance', 'accessibility', 'best-practices'];
const chromeFlags = ['--headless=new', '--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-component-update', '--no-first-run'];

const chrome = await launch({ chromePath, chromeFlags });

// A browser that painted nothing in time or lost its page measured nothing: it is loaded again. A page that is not answered is not.
async function load(address, attempts = 3) {
  const { lhr } = await lighthouse(address, { port: chrome.port, onlyCategories: kinds, formFactor: 'mobile', logLevel: 'silent' });
  if (!lhr.runtimeError) return lhr;
  console.log(' ', lhr.runtimeError.code, lhr.runtimeError.message);
  return attempts > 1 && !/DOCUMENT_REQUEST|DNS/.test(lhr.runtimeError.code) ? load(address, attempts - 1) : lhr;
}

try {
  for (const address of addresses) {
    const lhr = await load(address);
    console.log(new URL(address).pathname, ...kinds.map(kind => Math.round((lhr.categories[kind].score ?? 0) * 100)));
    const inKind = kind => lhr.categories[kind].auditRefs.filter(ref => ref.weight > 0).map(ref => lhr.audits[ref.id]);
    for (const audit of kinds.flatMap(inKind)) if (audit.score !== null && audit.score < 0.9) console.log(' ', audit.id, audit.displayValue ?? audit.title);
  }
} finally {
  chrome.kill();
}
