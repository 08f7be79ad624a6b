// What is typed is asked for: the settings at every key, the sheet by htmx when the fingers rest. The address keeps in step.
import { show } from './elements.js';
import { redraw } from './redraw.js';

const HTMX = '/static/vendor/htmx-2.0.11.min.js', LONGEST_WAIT = 10000, LONGEST_SILENCE = 2000;
// A server that lays other boards says so, and is asked again.
export const BUSY = 503, WAIT = 3000;
const form = () => document.getElementById('inputs');

// What this page has asked and not been told yet. A worker that is relieved in the middle of an answer can keep
// Chromium waiting for minutes, so the answers come first.
const underWay = new Set();

export function during(answer) {
  underWay.add(answer);
  answer.finally(() => underWay.delete(answer));
}

export async function settled() {
  while (underWay.size) await Promise.allSettled(underWay);
}

// A sheet that was under way when another key was pressed belongs to what was typed before.
let keys = 0, leaving = false;
const askedAt = new WeakMap();
export const isLate = xhr => askedAt.get(xhr) !== keys;

// What was typed on this page, also before its scripts were there.
export const typedNames = new Set(changedEntries().map(each => each.name));

function changedEntries() {
  return Array.from(form()?.elements ?? []).filter(isChanged);
}

function isChanged(entry) {
  if (entry.tagName === 'INPUT') return entry.value !== entry.defaultValue;
  return entry.tagName === 'SELECT' && entry.selectedIndex !== Math.max(0, Array.from(entry.options).findIndex(one => one.defaultSelected));
}

// Every card is a link: the address says what is typed, also while it cannot be read.
function afterRequest({ detail: { xhr, requestConfig, pathInfo } }) {
  if (isLate(xhr) || (xhr.status !== 200 && xhr.status !== 422)) return;
  if (requestConfig.triggeringEvent?.type === 'input') setAddress(pathInfo.finalRequestPath);
  markWrong();
}

// What stands behind the # says whose item the card is, and the state whether the number is large: then the address waits.
let waiting = '';

function setAddress(path) {
  if (history.state === 'large') waiting = path;
  else history.replaceState(history.state, '', path + location.hash);
}

// Only the part that was asked for may take its place: a static host would send its whole page.
function beforeSwap(event) {
  const { xhr, target } = event.detail;
  if (isLate(xhr)) return event.preventDefault();
  if (xhr.status === BUSY) return askLater('sheet');
  const right = xhr.getResponseHeader('X-Part') === target.id;
  event.detail.shouldSwap = right;
  if (!right) noAnswer('sheet');
  // the signal is back: the settings that did not come are asked for again
  else if (failedAt === keys) askAnswer(form());
  else answered('sheet');
}

// The settings are asked for at every key, and by hand: what htmx tells about each request takes, at a phone's
// speed, as long as drawing them. So does the request itself, where there is a worker to be asked by a message.
function askWorker(worker, path, pairs) {
  const { port1, port2 } = new MessageChannel();
  return new Promise(done => {
    const told = ({ data = null }) => {
      clearTimeout(silent);
      port1.close();
      done(data);
    };
    const silent = setTimeout(told, LONGEST_SILENCE, {});
    port1.onmessage = told;
    worker.postMessage({ path, pairs }, [port2]);
  });
}

async function answerTo(entries, signal) {
  const path = entries.getAttribute('action'), pairs = Array.from(new FormData(entries)), worker = navigator.serviceWorker?.controller;
  const told = worker && await askWorker(worker, path, pairs);
  if (told) return told;
  const response = await fetch(`${path}?${new URLSearchParams(pairs)}`, { headers: { 'HX-Target': 'answer' }, signal });
  return { status: response.status, part: response.headers.get('X-Part'), body: await response.text() };
}

let asking = new AbortController(), failedAt = -1;

async function askAnswer(entries) {
  const asked = keys;
  asking.abort();
  asking = new AbortController();
  const { signal } = asking, waited = setTimeout(() => asked === keys && asking.abort(), LONGEST_WAIT);
  try {
    const { status, part, body } = await answerTo(entries, signal);
    if (asked !== keys) return;
    if (status === BUSY) return askLater('answer');
    if (part !== 'answer') throw new Error('not an answer');
    inPlace(() => {
      redraw(document.getElementById('answer'), body);
      answered('answer');
    });
  } catch {
    // a later key, or a page that is being left, has cut it short
    if (asked !== keys || leaving) return;
    failedAt = keys;
    noAnswer('answer', 'sheet');
  } finally {
    clearTimeout(waited);
  }
}

// All is asked for again, unless a key is quicker.
function askLater(part) {
  const asked = keys;
  busy.add(part);
  takeAway('busy', 'failed', [part]);
  setTimeout(() => { if (asked === keys) form().dispatchEvent(new Event('input', { bubbles: true })); }, WAIT);
}

// The parts that a busy server has not answered yet.
const busy = new Set();

function answered(part) {
  busy.delete(part);
  show('busy', busy.size > 0);
  show('failed', false);
}

// Answers and cautions come and go above the form: a field with the pad open stays where it is under the finger.
function inPlace(change) {
  const field = document.querySelector('.padded #inputs :focus'), stood = field?.getBoundingClientRect().top;
  change();
  if (field) scrollBy({ top: field.getBoundingClientRect().top - stood, behavior: 'instant' });
}

export function noAnswer(...parts) {
  busy.clear();
  takeAway('failed', 'busy', parts);
}

// An old answer must not stand under a new measurement.
function takeAway(signal, other, parts) {
  inPlace(() => {
    show(signal, true);
    show(other, false);
    for (const id of parts) document.getElementById(id)?.replaceChildren();
  });
}

function markWrong() {
  for (const note of document.querySelectorAll('#inputs .note')) {
    const entry = document.getElementById(note.id.replace('note-', 'in-'));
    if (note.classList.contains('wrong')) entry.setAttribute('aria-invalid', 'true');
    else entry.removeAttribute('aria-invalid');
  }
}

// A page from the worker opens with its answer alone, since the form costs a phone as long again to lay out.
export async function fetchRest() {
  const place = document.getElementById('rest');
  if (!place) return;
  try {
    const response = await fetch(location.href, { headers: { 'HX-Target': 'rest' }, signal: AbortSignal.timeout(LONGEST_WAIT) });
    if (response.headers.get('X-Part') !== 'rest') throw new Error('not the rest');
    place.outerHTML = await response.text();
  } catch {
    if (leaving) return;
    place.remove();
    show('short', true);
  }
}

// htmx comes when the answer is painted. (As an async script it could miss DOMContentLoaded, which it waits for
// unless the page is complete.)
export function loadHtmx() {
  const script = document.createElement('script');
  script.src = HTMX;
  script.onload = () => {
    htmx.defineExtension('plain', { handleSwap: swapPlain });
    if (changedEntries().length) form().dispatchEvent(new Event('input', { bubbles: true }));
  };
  document.head.append(script);
}

// A sheet holds nothing of htmx's, so nothing needs cleaning up: htmx would fire two events for every
// element that goes, which at a phone's speed costs more than drawing the new ones.
function swapPlain(style, target, fragment) {
  if (style !== 'plain') return false;
  target.replaceChildren(fragment);
  return true;
}

// a page that is loaded again has nothing large on it
if (history.state === 'large') history.replaceState(null, '');
// the way back leads to an address of an earlier key, and the fields stay as they are
addEventListener('popstate', () => {
  const entries = form();
  if (waiting) setAddress(waiting);
  else if (entries && typedNames.size) setAddress(`${entries.getAttribute('action')}?${new URLSearchParams(new FormData(entries))}`);
  waiting = '';
});
addEventListener('pagehide', () => { leaving = true; });
addEventListener('pageshow', () => { leaving = false; });
document.addEventListener('input', ({ target }) => {
  keys += 1;
  typedNames.add(target.name);
  const entries = target.closest('#inputs');
  if (entries) during(askAnswer(entries));
}, true);
// all is asked for already: sent by its one field, the page would be loaded anew
document.addEventListener('submit', event => { if (event.target === form()) event.preventDefault(); });
document.addEventListener('htmx:beforeRequest', ({ detail: { xhr } }) => {
  askedAt.set(xhr, keys);
  during(new Promise(done => xhr.addEventListener('loadend', done)));
});
document.addEventListener('htmx:beforeSwap', beforeSwap);
// a caution that stands is said once
document.addEventListener('htmx:oobBeforeSwap', ({ detail }) => {
  if (detail.target.id === 'warn' && detail.target.textContent === detail.fragment.textContent) detail.shouldSwap = false;
});
document.addEventListener('htmx:afterRequest', afterRequest);
for (const name of ['htmx:sendError', 'htmx:timeout']) document.addEventListener(name, () => leaving || noAnswer('sheet'));
