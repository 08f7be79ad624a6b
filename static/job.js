// The page of the jobs. What a job says is decided where every answer is: it is sent along, and comes back as a page.
import { count_refused, enter, fill_in, may_be_line, put_back, take_out } from '/editing.js';
import { BUSY, WAIT, during } from './answers.js';
import { byId, isStatic, make, show } from './elements.js';
import { LAST, blank, change, everyJob, forget, hush, keepNew, others, read, recall, remember, say, unsaved } from './jobs.js';
import { CARRIES, LARGEST, beginCopy, download, fileName, linkTo, unpacked } from './sending.js';
import { endsHere } from './taps.js';

const MOST_TRIES = 20, LONGEST_WAIT = 30000, LONGEST_PRESS = 3000, REST = 900, VIEW = 'shopcalc.view', TOO_LARGE = 413, NAMELESS = 'Job';
const page = byId('job'), work = byId('work');

// A static host answers no job: its worker does, which a first visit is still installing. It is waited for once, and not by a
// page that was loaded past it, which it does not take over.
let taken;
const answering = () => taken ??= takenOver();

async function takenOver() {
  const { serviceWorker } = navigator;
  if (!isStatic || !serviceWorker || serviceWorker.controller) return;
  if ((await serviceWorker.getRegistration())?.active?.state === 'activated') return;
  await new Promise(done => {
    serviceWorker.addEventListener('controllerchange', done, { once: true });
    setTimeout(done, LONGEST_WAIT);
  });
}

// A server that works other jobs says so, and is asked again, unless nobody waits for the answer any more.
async function asked(job, kind = '', asking = new AbortController()) {
  const { signal } = asking, body = JSON.stringify(job);
  await answering();
  for (let tries = 0; tries < MOST_TRIES; tries += 1) {
    const late = setTimeout(() => asking.abort(), LONGEST_WAIT);
    try {
      const response = await fetch(`/job${kind}`, { method: 'POST', body, headers: { 'Content-Type': 'application/json' }, signal });
      if (response.status !== BUSY) return response;
    } finally {
      clearTimeout(late);
    }
    await new Promise(done => setTimeout(done, WAIT));
    signal.throwIfAborted();
  }
  throw new Error('busy');
}

// `current` is the job chosen; the fields on the page belong to the job that `work.dataset.job` names.
// `owed` says that a page that was asked for has not been shown.
let current = '', draws = 0, owed = false, asking = new AbortController();
// What is saved or sent waits until it is written, what is printed until it is drawn too.
let writing = Promise.resolve(), drawing = writing, resting;
// How far down each view of it was left.
let places = {};

async function choose(id) {
  const all = await everyJob();
  const isHere = one => all.some(([each]) => each === one);
  current = [id, recall(LAST), all[0]?.[0]].find(isHere) ?? '';
  if (current) remember(LAST, current);
  // a page that is loaded again has the job that was chosen last
  const { hash } = location;
  // but an address whose job could not be read may be opened again
  if (hash && !hash.startsWith(CARRIES) && (all.length || !id)) history.replaceState(history.state, '', current ? `#${current}` : '/job');
  byId('job-choice').replaceChildren(...named(all).map(([each, title]) => new Option(title, each, false, each === current)));
  byId('job-choice').parentElement.classList.toggle('none', !all.length);
  byId('job-keep').hidden = work.hidden = !current;
  Promise.resolve(navigator.storage?.persisted?.()).catch(() => false).then(isKept => show('lent', !isKept));
  byId('job-code').replaceChildren();
  if (work.dataset.job !== current) {
    work.replaceChildren();
    places = {};
  }
  if (current) await draw();
  byId('job-choice').classList.add('ready');
}

// What is pressed is let go before the page is drawn anew, or it would be pressed in vain: also where nobody tells of it.
let lifted = Promise.resolve();

function press() {
  lifted = new Promise(done => {
    for (const kind of ['pointerup', 'pointercancel']) addEventListener(kind, () => setTimeout(done), { once: true, signal: AbortSignal.timeout(LONGEST_PRESS) });
    setTimeout(done, LONGEST_PRESS);
  });
}

// Jobs of one title are told apart by a number.
function named(all) {
  const many = new Map();
  return all.map(([id, { title }]) => {
    many.set(title, (many.get(title) ?? 0) + 1);
    return [id, many.get(title) > 1 ? `${title || NAMELESS} (${many.get(title)})` : title || NAMELESS];
  });
}

function draw() {
  drawing = drawn();
  return drawing;
}

async function drawn() {
  const mine = ++draws, job = await read(current);
  if (!job) return choose('');
  owed = true;
  // a key came meanwhile
  if (mine !== draws) return;
  work.ariaBusy = true;
  const first = work.dataset.job !== current;
  asking.abort();
  asking = new AbortController();
  try {
    const response = await asked(job, '', asking), text = await response.text();
    await lifted;
    if (mine !== draws) return;
    const isTooLarge = response.status === TOO_LARGE;
    if (!isTooLarge && !response.headers.get('X-Part')) throw new Error('not an answer');
    owed = false;
    if (isTooLarge) return say('This job is larger than a server takes. It is kept here, and opens where this page works with no signal.');
    // a job that is refused for what was just typed keeps its page, where it can be mended
    if (response.status !== 200 && work.querySelector('[data-set]')) return say(textOf(text));
    const { id, value: typed, selectionStart: from, selectionEnd: to } = document.activeElement ?? {};
    work.dataset.job = current;
    work.innerHTML = text;
    // a job that is refused has no views
    const view = work.dataset.at || recall(VIEW), hasView = byId(`view-${view}`) || !work.querySelector('.views');
    work.dataset.at = view && hasView ? view : 'items';
    for (const link of work.querySelectorAll('a[href*="#item="]')) link.hash = link.hash.replace('=', `=${current}/`);
    markView();
    if (first) turnTo(work.dataset.at);
    const field = id ? byId(id) : null;
    field?.focus({ preventScroll: true });
    // what was marked to be typed over stays marked, and a count that stands there now is
    if (field?.inputMode === 'numeric' && field.value !== typed) field.select();
    else if (from != null) field?.setSelectionRange?.(from, to);
    show('failed', false);
  } catch {
    if (mine === draws) show('failed', true);
  } finally {
    if (mine === draws) work.ariaBusy = false;
  }
}

// What is typed cuts an answer short, and one key that is taken back is no change: then it is asked for again.
function drawOwed() {
  if (owed && work.ariaBusy !== 'true') during(draw());
}

// One view of the job at a time: at the saw only the order of work is wanted.
function markView() {
  for (const button of work.querySelectorAll('[data-view]')) button.setAttribute('aria-pressed', button.dataset.view === work.dataset.at);
}

// Each view is found again where it was left, the order of work for the first time where the work goes on.
function turnTo(view) {
  const at = places[view], next = view === 'order' && work.querySelector('.done') && work.querySelector('.job-run:not(.done)');
  work.dataset.at = view;
  markView();
  if (at == null && next) next.scrollIntoView({ behavior: 'instant' });
  else scrollTo({ top: at ?? Math.min(scrollY, scrollY + work.getBoundingClientRect().top), behavior: 'instant' });
}

const chosenName = () => byId('job-choice').selectedOptions[0].textContent;

const textOf = html => new DOMParser().parseFromString(html, 'text/html').body.textContent.trim();

async function fieldChanged(event, ended) {
  const field = event.target.closest('[data-set]');
  if (!field) return;
  draws += 1;
  asking.abort();
  clearTimeout(resting);
  if (work.ariaBusy === 'true') work.ariaBusy = false;
  if (ended) hush();
  // an edit that is made again later is made with what stood there now
  if (!ended) beginNext(field);
  const entry = { ...field.dataset, value: field.value, checked: field.checked };
  // a count is one thing: half of it is none, and one that is none leaves it as it was
  const refused = isCount(field) ? count_refused(entry.value) : '';
  if (refused) entry.value = field.defaultValue || '1';
  writing = Promise.allSettled([writing, change(work.dataset.job, job => enter(job, entry))]).then(() => {});
  await writing;
  if (!ended) {
    if (!isProse(field)) resting = setTimeout(() => rested(event), REST);
    return;
  }
  if (field.dataset.set === 'title') byId('job-choice').selectedOptions[0].textContent = field.value || NAMELESS;
  await draw();
  hear(saidAt(field.id));
  for (const each of work.querySelectorAll('.refused')) each.remove();
  // it is told where it was typed; the page is drawn anew by then
  if (refused) byId(field.id)?.parentElement.after(make('p', { className: 'note wrong refused', role: 'alert' }, refused));
}

// The line to go on with is there before the answer is: whoever tabs on would land on a button, and type for nothing.
function beginNext(field) {
  const line = field.closest('.line');
  if (!line || line.nextElementSibling || !field.value) return;
  const next = line.cloneNode(true), place = Number(field.dataset.place) + 1;
  if (!may_be_line(place)) return;
  next.querySelector('.note')?.remove();
  next.ariaLabel = line.ariaLabel.replace(/\d+$/, place + 1);
  for (const input of next.querySelectorAll('input')) {
    input.id = input.previousElementSibling.htmlFor = input.id.replace(/\d+$/, place);
    input.dataset.place = place;
    input.value = input.defaultValue = '';
    for (const name of ['aria-invalid', 'aria-describedby']) input.removeAttribute(name);
  }
  line.after(next);
}

// What changed out of sight of who listens.
const hear = text => { byId('job-heard').textContent = text; };
const saidAt = id => [...byId(id)?.closest('.job-run, .line, .field')?.querySelectorAll('.note.wrong, .check.stop, .correct') ?? []].map(each => each.textContent).join(' ');

const isTyping = () => work.contains(document.activeElement) && document.activeElement.matches('textarea, input:not([type=checkbox])');
const isCount = ({ dataset: { key } }) => key === 'quantity' || key === 'count';
const isProse = ({ dataset: { set, key } }) => ['title', 'notes'].includes(set) || key === 'label';

// What is measured is worked out when the fingers rest; with the pad open, when that is closed.
function rested(event) {
  if (document.activeElement === event.target && !document.querySelector('.padded')) fieldEnded(event);
}

function fieldEnded(event) {
  if (!event.target.closest('[data-set]')) return;
  drawing = fieldChanged(event, true);
  during(drawing);
}

// Those taken out one after another come back one after another.
const out = [];

async function remove(number) {
  const id = work.dataset.job;
  let taken;
  await change(id, job => { taken = take_out(job, Number(number)); });
  await draw();
  if (!taken) return;
  out.push({ id, taken });
  offerBack(`${taken.item.label || 'It'} is taken out. `);
}

function offerBack(text) {
  say(text);
  hear('');
  const undo = make('button', { type: 'button' }, 'Put it back');
  undo.addEventListener('click', putBack);
  byId('job-says').append(undo);
  // what was tapped is gone, and the focus with it
  const { activeElement: held } = document;
  if (held === document.body || !held.getClientRects().length) undo.focus({ preventScroll: true });
}

async function putBack() {
  const last = out.pop();
  // a second tap came before the first was done
  if (!last) return;
  const { id, taken, job: whole } = last;
  let told;
  // a job comes back under its own name, which cards and items that were taken out know
  if (whole) await choose(await keepNew(whole, id));
  else await change(id, job => { told = put_back(job, taken); });
  if (told?.refused) {
    out.push(last);
    return offerBack(`Not put back. ${told.refused} `);
  }
  // its job is gone, which has been said
  if (!told && !whole) return draw();
  hush();
  if (out.length && !unsaved.size) offerBack('It is back. The one taken out before it: ');
  hear('It is back.');
  if (whole) return byId('job-choice').focus();
  await draw();
  byId(`label-${told.number}`)?.focus();
}

// A job from outside is checked field by field before anything here changes.
async function takeIn(text, from) {
  let job;
  if (new Blob([text]).size > LARGEST) return say(`${from} is larger than a job can be. Nothing was changed.`);
  try { job = JSON.parse(text); } catch { return say(`${from} is cut short, or is no job. Nothing was changed.`); }
  const response = await asked(job).catch(fault => fault);
  if (response.name === 'AbortError') return say(`${from} takes longer to work out than is waited for. Nothing was changed.`);
  if (!response.headers?.get('X-Part')) return say('It cannot be checked without a signal or a copy of this page here. Nothing was changed.');
  if (response.status !== 200) {
    say(`${from} was not taken. ${textOf(await response.text())}`);
    return true;
  }
  // opened again, a job that has not changed since is no second one
  fill_in(job);
  const kept = (await everyJob()).find(([, each]) => JSON.stringify(each) === JSON.stringify(job));
  await choose(kept ? kept[0] : await keepNew(job));
  if (!unsaved.size) say(`${from} is ${kept ? 'here already' : 'kept here'} as “${chosenName()}”.`);
  return true;
}

async function showCode(job) {
  const link = await linkTo(job), drawer = await import('./vendor/uqr-0.1.2.mjs').catch(() => null);
  if (!drawer) return say('The code needs a signal the first time.');
  try {
    byId('job-code').innerHTML = drawer.renderSVG(link, { ecc: 'L', border: 4 });
    byId('job-code').firstChild.setAttribute('role', 'img');
    byId('job-code').firstChild.setAttribute('aria-label', 'Code of the link to this job');
    say('');
    hear('The code is below.');
    byId('job-code').scrollIntoView({ block: 'nearest' });
  } catch {
    say('This job is too large for a code. Send it as a file or a link.');
  }
}

async function copyLink(job, { coded, copied }) {
  const link = await coded, isCopied = await copied || await navigator.clipboard?.writeText(link).then(() => true, () => false);
  byId('job-code').replaceChildren();
  if (isCopied) return say('The link is copied. It carries the whole job.');
  const field = make('input', { value: link, readOnly: true, ariaLabel: 'Link to the job' });
  byId('job-code').append(field);
  field.select();
  say('It could not be copied here: copy the link from its field.');
}

const DO = {
  start: async () => { await choose(await keepNew(blank('New job'))); hear('A new job.'); },
  boathouse: async () => takeIn(await (await fetch('/static/boathouse.json')).text(), 'The boathouse'),
  save: job => download(JSON.stringify(job, null, 2), fileName(job, 'json'), 'application/json'),
  csv: async job => {
    const response = await asked(job, '.csv').catch(() => null);
    if (!response) say('There is no answer now, so no file was made. The job is still kept; try again.');
    // a spreadsheet takes it for another alphabet without its mark
    else if (response.ok) download(`\ufeff${await response.text()}`, fileName(job, 'csv'), 'text/csv');
    else say('There is no cut list of a job that is refused.');
  },
  link: copyLink,
  code: showCode,
  print: () => print(),
  delete: async job => {
    if (!confirm(`Delete “${chosenName()}” from this device? Save it as a file first if it may be wanted again.`)) return;
    const id = current, name = chosenName();
    if (!await forget(id)) return;
    await choose('');
    out.push({ id, job });
    offerBack(`“${name}” is deleted. `);
  },
};

const WITHOUT_JOB = ['start', 'boathouse', 'print'];

function startPage() {
  page.addEventListener('input', event => fieldChanged(event, false));
  page.addEventListener('change', fieldEnded);
  page.addEventListener('click', async event => {
    const { view } = event.target.dataset;
    if (view) {
      places[work.dataset.at] = scrollY;
      remember(VIEW, view);
      hush();
      return turnTo(view);
    }
    const button = event.target.closest('[data-do]');
    if (!button) return;
    const { do: name, id } = button.dataset;
    hush();
    // a tap also ends an entry
    if (name === 'remove') {
      endsHere(event);
      return writing.then(() => remove(id));
    }
    const coming = writing.then(() => read(current)), copy = name === 'link' ? beginCopy(coming) : null;
    const job = await coming;
    if (name === 'print') await drawing;
    if (!job && !WITHOUT_JOB.includes(name)) return say('This job was deleted in another tab.');
    try {
      await DO[name](job, copy);
    } catch {
      say('That could not be done now. What is kept here is as it was; try again.');
    }
  });
  page.addEventListener('pointerdown', press);
  page.addEventListener('focusout', () => setTimeout(drawOwed));
  // a count is one thing, and is typed anew
  page.addEventListener('focusin', ({ target }) => { if (target.inputMode === 'numeric') target.select(); });
  byId('job-choice').addEventListener('change', event => { say(''); drawing = choose(event.target.value); });
  byId('job-file').addEventListener('change', async event => {
    const [file] = event.target.files;
    event.target.value = '';
    if (file) await takeIn(file.size > LARGEST ? ' '.repeat(LARGEST + 1) : await file.text(), 'The file');
  });
  others?.addEventListener('message', event => {
    if (event.data !== current) return;
    // what is being typed stays under the fingers, and the page is drawn when they leave it
    owed = true;
    if (!isTyping()) draw();
  });
  addEventListener('pageshow', ({ persisted }) => persisted && choose(current));
  addEventListener('hashchange', fromAddress);
  // a tap before this would have been lost, and looks so
  for (const button of page.querySelectorAll(':disabled')) button.disabled = false;
  fromAddress();
}

async function fromAddress() {
  const { hash } = location, named = hash.slice(1);
  if (!hash.startsWith(CARRIES)) {
    await choose(named);
    if (named && current && current !== named) say('The job of this link is not on this device.');
    return;
  }
  await choose('');
  // what a message puts behind a link is none of it
  const [code] = /^[\w-]*/.exec(hash.slice(CARRIES.length)), text = await unpacked(code).catch(() => '');
  // a link that could not be looked at stays in the address, to be opened again
  if (await takeIn(text, 'The link') || !text) history.replaceState(null, '', '/job');
}

startPage();
