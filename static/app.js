// What only a browser can do: keep the worker, say whether there is a copy for no signal, offer a newer version,
// keep the address in step with the form. What the cards say is decided elsewhere. The modules that come after the first
// paint use five things of this script: show, during, underWay, typedNames and isLate.
const show = (name, on) => document.querySelectorAll(`[data-signal="${name}"]`).forEach(each => { each.hidden = !on; });

async function keepWorker() {
  if (!('serviceWorker' in navigator)) return goWithout();
  const had = Boolean(navigator.serviceWorker.controller);
  show('keeping', !had);
  try {
    const kept = await navigator.serviceWorker.register('/worker.js', { updateViaCache: 'none' });
    watch(kept, had);
    await navigator.serviceWorker.ready;
    show('keeping', false);
    show('kept', true);
    document.addEventListener('visibilitychange', () => document.hidden || kept.update().catch(() => {}));
  } catch {
    // with no signal the worker cannot be fetched anew; the one at hand goes on answering
    show('keeping', false);
    if (had) show('kept', true);
    else goWithout();
  }
}

function goWithout() {
  show('never', true);
  if (!seesNoQuery) return;
  document.documentElement.hidden = false;
  noAnswer('answer', 'sheet');
}

// What this page has asked and not been told yet. A worker that is relieved in the middle of an answer can keep
// Chromium waiting for minutes, so the answers come first.
const underWay = new Set();

function during(answer) {
  underWay.add(answer);
  answer.finally(() => underWay.delete(answer));
}

// A newer version waits until somebody asks for it, in this tab or in another one.
function watch(kept, had) {
  let asked = false, overtaken = false;
  const offer = event => {
    show('newer', overtaken || Boolean(kept.waiting && navigator.serviceWorker.controller));
    if (event?.target.state === 'redundant' && !kept.active) {
      show('never', true);
      show('keeping', false);
    }
  };
  const follow = worker => worker?.addEventListener('statechange', offer);
  offer();
  follow(kept.installing);
  follow(kept.waiting);
  kept.addEventListener('updatefound', () => follow(kept.installing));
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    // a tab that did not ask keeps what it shows, and offers the reload
    if (asked || seesNoQuery) return location.reload();
    overtaken = had;
    offer();
  });
  document.querySelector('[data-use-newer]').addEventListener('click', async () => {
    asked = true;
    while (underWay.size) await Promise.allSettled(underWay);
    if (kept.waiting) kept.waiting.postMessage('use-newer');
    else location.reload();
  });
}

// A page from a static host shows the starting values whatever its address says: it is not shown until the worker,
// which can read the address, answers it.
const seesNoQuery = Boolean(document.querySelector('meta[name="shopcalc-static"]') && location.search);

// Every card is a link: the address says what is typed, also while it cannot be read.
function afterRequest(event) {
  const { xhr, requestConfig } = event.detail;
  if (isLate(xhr) || (xhr.status !== 200 && xhr.status !== 422)) return;
  if (requestConfig.triggeringEvent?.type === 'input') setAddress(event.detail.pathInfo.finalRequestPath);
  markWrong();
}

// What stands behind the # says whose item the card is, and the state whether the number is large: then the address waits.
let waiting = '';
// a page that is loaded again has nothing large on it
if (history.state === 'large') history.replaceState(null, '');
function setAddress(path) {
  if (history.state === 'large') waiting = path;
  else history.replaceState(history.state, '', path + location.hash);
}

// A sheet that was under way when another key was pressed belongs to what was typed before.
let keys = 0;
// what was typed before `memory.js` was there to see it
const typedNames = new Set();
const askedAt = new WeakMap();
const isLate = xhr => askedAt.get(xhr) !== keys;

// Only the part that was asked for may take its place: a static host would send its whole page.
function beforeSwap(event) {
  const { xhr, target } = event.detail;
  if (isLate(xhr)) return event.preventDefault();
  const right = xhr.getResponseHeader('X-Part') === target.id;
  event.detail.shouldSwap = right;
  if (!right) noAnswer('sheet');
  // the signal is back: the settings that did not come are asked for again
  else if (failedAt === keys) askAnswer(document.getElementById('inputs'));
  else show('failed', false);
}

// The settings are asked for at every key, and by hand: what htmx tells about each request takes, at a phone's
// speed, as long as drawing them. It fetches the sheet, when the fingers rest.
let asking = new AbortController(), failedAt = -1, leaving = false;
const LONGEST_WAIT = 10000;

async function askAnswer(form) {
  const asked = keys;
  asking.abort();
  asking = new AbortController();
  const { signal } = asking, waited = setTimeout(() => asked === keys && asking.abort(), LONGEST_WAIT);
  try {
    const query = new URLSearchParams(new FormData(form));
    const response = await fetch(`${form.getAttribute('action')}?${query}`, { headers: { 'HX-Target': 'answer' }, signal });
    const text = await response.text();
    if (asked !== keys) return;
    if (response.headers.get('X-Part') !== 'answer') throw new Error('not an answer');
    inPlace(() => {
      redraw(document.getElementById('answer'), text);
      show('failed', false);
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

// Mostly only numbers change: then the elements stay and their texts are put in, which costs a phone half as much. Where
// something comes or goes only the least element that holds it is filled anew.
function redraw(place, html) {
  const fresh = document.createElement('template');
  fresh.innerHTML = html;
  refill(place, fresh.content);
}

function refill(old, now) {
  const mine = old.childNodes, theirs = now.childNodes;
  if (!areAllAlike(mine, theirs)) return old.replaceChildren(...theirs);
  for (let nth = 0; nth < mine.length; nth += 1) {
    const one = mine[nth], other = theirs[nth];
    if (one.nodeType !== Node.TEXT_NODE) refill(one, other);
    else if (one.data !== other.data) one.data = other.data;
  }
}

function areAllAlike(mine, theirs) {
  if (mine.length !== theirs.length) return false;
  for (let nth = 0; nth < mine.length; nth += 1) if (!areAlike(mine[nth], theirs[nth])) return false;
  return true;
}

function areAlike(one, other) {
  const said = one.attributes, wanted = other.attributes;
  if (one.nodeName !== other.nodeName || said?.length !== wanted?.length) return false;
  for (let nth = 0; nth < (said?.length ?? 0); nth += 1) if (other.getAttribute(said[nth].name) !== said[nth].value) return false;
  return true;
}

// Answers and cautions come and go above the form: a field with the pad open stays where it is under the finger.
function inPlace(change) {
  const field = document.querySelector('.padded #inputs :focus'), stood = field?.getBoundingClientRect().top;
  change();
  if (field) scrollBy({ top: field.getBoundingClientRect().top - stood, behavior: 'instant' });
}

// An old answer must not stand under a new measurement.
function noAnswer(...parts) {
  inPlace(() => {
    show('failed', true);
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

// The page answers before any script has run; htmx comes after it is painted. (As an async script it could miss
// DOMContentLoaded, which it waits for unless the page is complete.)
function loadHtmx() {
  load(HTMX).onload = () => {
    htmx.defineExtension('plain', { handleSwap: swapPlain });
    answerWhatWasTyped();
  };
}

// What a hand needs at arm's length; the page says when it listens.
async function loadHand() {
  await Promise.all([import('/static/pad.js'), import('/static/large.js')]);
  document.documentElement.dataset.hand = '';
}

function load(address) {
  const script = document.createElement('script');
  script.src = address;
  document.head.append(script);
  return script;
}

// A page from the worker opens with its answer alone, since the form costs a phone as long again to lay out.
async function fetchRest() {
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

// A frame on, the answer is on the screen: whatever starts here no longer stands in its way.
function afterPaint() {
  // a page in a hidden tab gets no frames, and starts all the same
  const start = async () => { keepWorker(); await fetchRest(); import('/static/units.js').catch(() => {}); loadHtmx(); loadHand(); import('/static/memory.js'); import(document.getElementById('job') ? '/static/job.js' : '/static/jobs.js'); };
  if (document.hidden) start();
  else requestAnimationFrame(() => setTimeout(start));
}

// A sheet holds nothing of htmx's, so nothing needs cleaning up: htmx would fire two events for every
// element that goes, which at a phone's speed costs more than drawing the new ones.
function swapPlain(style, target, fragment) {
  if (style !== 'plain') return false;
  target.replaceChildren(fragment);
  return true;
}

function answerWhatWasTyped() {
  const form = document.getElementById('inputs');
  const changed = each => each.tagName === 'INPUT' ? each.value !== each.defaultValue
    : each.tagName === 'SELECT' && each.selectedIndex !== Math.max(0, Array.from(each.options).findIndex(one => one.defaultSelected));
  if (form && Array.from(form.elements).some(changed)) form.dispatchEvent(new Event('input', { bubbles: true }));
}

const { htmx: HTMX } = document.currentScript.dataset;
document.addEventListener('htmx:beforeSwap', beforeSwap);
document.addEventListener('htmx:afterRequest', afterRequest);
for (const name of ['htmx:sendError', 'htmx:timeout']) document.addEventListener(name, () => leaving || noAnswer('sheet'));
addEventListener('popstate', () => {
  if (waiting) setAddress(waiting);
  waiting = '';
});
addEventListener('pagehide', () => { leaving = true; });
addEventListener('pageshow', () => { leaving = false; });
document.addEventListener('input', event => {
  keys += 1;
  typedNames.add(event.target.name);
  const form = event.target.closest('#inputs');
  if (form) during(askAnswer(form));
}, true);
document.addEventListener('htmx:beforeRequest', ({ detail: { xhr } }) => {
  askedAt.set(xhr, keys);
  during(new Promise(done => xhr.addEventListener('loadend', done)));
});
if (seesNoQuery) document.documentElement.hidden = true;
if (document.readyState === 'complete') afterPaint();
else addEventListener('load', afterPaint);
