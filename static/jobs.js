// Keeps the jobs on this device, for the page of the jobs and for the cards that put their entries there.
import { add_item, fill_in, item_of, keep_item } from '/editing.js';
import { typedNames } from './answers.js';
import { SHOP, USUAL_TAPE, byId, make } from './elements.js';
import { meantIn } from './units.js';
import { createStore, del, entries, get, update } from './vendor/idb-keyval-6.2.2.js';

let store = createStore('shopcalc', 'jobs');
export const others = channel();
// where the job worked on last is remembered
export const LAST = 'shopcalc.job';
const LONGEST_WAIT = 5000;
// What a shop can be set to, of what is chosen and not typed: a job is refused for any other.
const KNOWN = { tape: ['8', '16', '32', '64', '128'], units: ['in', 'mm'] };
const NAMED = { in: 'inches', mm: 'mm' };
const unitOf = ({ units = 'in' } = {}) => units;

// What the storage would not take, of each job: the edits, which are made again on what is stored once it takes them, the
// job that a new one began with, and the job as they leave it.
export const unsaved = new Map();
// The jobs as they were last seen here, for when the storage gives nothing for a while.
const seen = new Map();

function channel() {
  // where storage is forbidden so is talk between tabs, in some browsers
  try { return new BroadcastChannel('shopcalc-jobs'); } catch { return null; }
}

export function say(text) {
  const line = byId('job-says') ?? byId('job-added');
  line.textContent = text;
  line.hidden = !text;
}

// What is nowhere but on this page is not left without a word.
const askBeforeLeaving = event => event.preventDefault();

// Whether a job had edits that waited; it has none any more.
function clearUnsaved(id) {
  const waited = unsaved.delete(id);
  if (!unsaved.size) removeEventListener('beforeunload', askBeforeLeaving);
  return waited;
}

// What was said goes when something else is done, but not that something could not be kept.
export function hush() {
  if (!unsaved.size) say('');
}

export function remember(key, value) {
  try { localStorage[key] = value; } catch { /* the choice is only forgotten */ }
}

export function recall(key) {
  try { return localStorage[key] ?? ''; } catch { return ''; }
}

export async function read(id) {
  const held = unsaved.get(id)?.job;
  if (held) return held;
  try {
    const job = await inTime(get(id, store));
    seen.set(id, job);
    return job;
  } catch {
    return structuredClone(seen.get(id));
  }
}

// A storage that says nothing counts as one that fails, unless it `isBusy` with what it was given. What failed is opened
// anew for the next time.
async function inTime(asked, isBusy = () => false) {
  const late = new Promise((_, fail) => setTimeout(() => isBusy() || fail(new Error('silent')), LONGEST_WAIT));
  try {
    return await Promise.race([asked, late]);
  } catch (fault) {
    store = createStore('shopcalc', 'jobs');
    throw fault;
  }
}

// What a document leaves out is there before it is edited.
function edited(job, edits) {
  fill_in(job);
  for (const each of edits) each(job);
}

// Every change is made to what is stored now, in one transaction, so two tabs with one job lose nothing.
export async function change(id, edit, usual) {
  let job, gone = false, late = false;
  const owed = () => unsaved.get(id) ?? { edits: [], first: usual };
  try {
    await inTime(update(id, kept => {
      // this edit waits among the unsaved by now
      if (late) throw new Error('late');
      const { edits, first } = owed();
      job = kept ?? structuredClone(first);
      gone = !job;
      if (gone) throw new Error('deleted');
      edited(job, [...edits, edit]);
      return job;
    }, store), () => job);
    seen.set(id, job);
    if (clearUnsaved(id)) say('Saved again.');
  } catch (fault) {
    if (gone) {
      clearUnsaved(id);
      return say('This job was deleted in another tab: nothing is kept of what you type here.');
    }
    late = true;
    const { edits, first, job: held } = owed();
    // the storage gave nothing to make the edit on
    if (!job) {
      job = structuredClone(held ?? seen.get(id) ?? first);
      if (job) edited(job, [edit]);
    }
    unsaved.set(id, { edits: [...edits, edit], first, job });
    addEventListener('beforeunload', askBeforeLeaving);
    const isFull = fault.name === 'QuotaExceededError', why = isFull ? 'the storage of this device is full' : 'this browser keeps nothing for this page';
    const way = isFull ? 'Make room on it, and type on.' : 'Allow it to, or use another, to build a job.';
    say(`Not saved: ${why}. ${byId('job-says') ? 'Save the job as a file before you close this page.' : way}`);
  }
  others?.postMessage(id);
}

export async function everyJob() {
  let kept;
  try {
    kept = await inTime(entries(store));
    for (const [id, job] of kept) seen.set(id, job);
  } catch {
    kept = [...seen];
    if (!kept.length) say('The jobs that are kept here cannot be read now. Open this page again.');
  }
  const all = new Map([...kept, ...Array.from(unsaved, ([id, { job }]) => [id, job])].filter(([, job]) => job));
  return [...all].sort((one, other) => String(one[1].title).localeCompare(String(other[1].title)));
}

// A new job has the shop of this device; one from outside that names no shop has the usual one.
export function blank(title) {
  const job = { title, shop: shopNow() };
  fill_in(job);
  return job;
}

function shopNow() {
  try {
    const kept = JSON.parse(recall(SHOP) || '[]').filter(([name, text]) => typeof text === 'string' && (KNOWN[name]?.includes(text) ?? true));
    return Object.fromEntries(kept);
  } catch { return {}; }
}

// Jobs of one title stand in the order in which they came: the time goes before the rest of the name.
export async function keepNew(job, id = `${Date.now()}-${crypto.randomUUID?.() ?? ''}`) {
  await change(id, () => {}, job);
  remember(LAST, id);
  navigator.storage?.persist?.().catch(() => {});
  return id;
}

// Whether it is gone; why not has been told then.
export async function forget(id) {
  try {
    await inTime(del(id, store));
  } catch {
    // one that was never stored is gone with this
    if (unsaved.get(id)?.first === undefined) {
      say('Not deleted: the storage of this device does not answer.');
      return false;
    }
  }
  seen.delete(id);
  clearUnsaved(id);
  others?.postMessage(id);
  return true;
}

// On a card: its entries become an item of the job; on the card of an item they stay with it, at every key.

async function offerToAdd() {
  const button = byId('add-to-job'), form = byId('inputs');
  // what comes from the job is not typed
  form.addEventListener('input', ({ target }) => target === form || owed.add(target.name));
  const here = await itemHere();
  // one after another, each as the card stood at its tap or key
  let keeping = Promise.resolve();
  const keep = act => { keeping = keeping.then(act).catch(() => {}); };
  button.hidden = Boolean(here);
  if (!here) {
    button.addEventListener('click', ({ detail }) => {
      // a reading that was not taken is none of a card that is added
      const entered = entriesOf(form, ({ name, text }) => text || !form.elements[name].closest('.read'));
      // a finger that trembles adds one
      if (detail < 2) keep(() => addItem(entered));
    });
    // what was added is not what is typed after it
    return form.addEventListener('input', () => hush());
  }
  const keepOwed = () => {
    const entered = entriesOf(form, ({ name }) => owed.has(name));
    if (entered.entries.length) keep(() => keepItem(here, entered));
  };
  form.addEventListener('input', ({ target }) => target === form || keepOwed());
  keepOwed();
  const lookAgain = async () => { if (await lookFor(here)) keepOwed(); };
  others?.addEventListener('message', ({ data }) => { if (data === here.job) lookAgain(); });
  addEventListener('pageshow', ({ persisted }) => persisted && lookAgain());
}

// The names that were typed on an item's card and are not kept yet.
const owed = new Set(typedNames);

// Whose card this is, as its address says; none where the job has no such item.
async function itemHere() {
  const [, job, number] = /^#item=([^/]+)\/(\d+)$/.exec(location.hash) ?? [];
  const kept = job && await read(job), here = { job, number: Number(number), isGone: false };
  const item = kept && item_of(kept, here.number, setupHere());
  if (!item) return null;
  tellWhose(item, kept);
  takeEntries(item, kept);
  return { ...here, inputs: textOf(item) };
}

// A job's bare numbers need not be of the unit that the fingers are used to.
function tellWhose(item, job) {
  const stand = document.querySelector('.stand'), name = item.label || document.querySelector('h1').textContent;
  const tell = () => {
    const unit = byId('shop-units').value, isOther = unit !== unitOf(shopNow());
    stand.textContent = `${name}, in “${job.title}”${isOther ? `. Bare numbers here are ${NAMED[unit]}.` : ''}`;
  };
  tell();
  document.title = `${name}: ${document.title}`;
  byId('shop-units').addEventListener('input', tell);
  // the starting values would be those of another card
  document.querySelector('[data-anew]').hidden = true;
}

// An item that was taken out in another tab is gone until the same one is put back: another may be given its number. Says whether
// it has come back just now.
async function lookFor(here) {
  const kept = await read(here.job), item = kept && item_of(kept, here.number, setupHere());
  if (kept && !item) here.isGone = true;
  if (!item) return;
  // one that was taken out is back if it is the same
  if (here.isGone && textOf(item) !== here.inputs) return;
  const isBack = here.isGone;
  here.isGone = false;
  here.inputs = textOf(item);
  takeEntries(item, kept);
  return isBack;
}

// The entries of an item, which a document may leave out.
const textOf = ({ inputs = {} }) => JSON.stringify(inputs);

// What is not being typed here stands as the job has it: an address may be older, and another tab ahead.
function takeEntries({ inputs = {} }, { shop }) {
  const form = byId('inputs'), unit = unitOf(shop), isAlike = form.elements.units.value === unit;
  let isOther = false;
  for (const [name, text] of Object.entries({ tape: shop?.tape || USUAL_TAPE, ...inputs })) {
    const entry = form.elements[name];
    if (!entry || owed.has(name)) continue;
    // an entry of one line holds no other, and a choice only its own options
    const meant = (isAlike ? text : meantIn(unit, entry.dataset.kind, text)).replace(/\s*[\r\n]+\s*/g, ', ');
    if (entry.value === meant || (entry.options && !Array.from(entry.options).some(({ value }) => value === meant))) continue;
    entry.value = meant;
    isOther = true;
  }
  if (isOther) form.dispatchEvent(new Event('input', { bubbles: true }));
}

const setupHere = () => byId('inputs').getAttribute('action').slice(1);

async function keepItem(here, entered) {
  const isKept = await editFromCard(here.job, job => {
    const told = keep_item(job, here.isGone ? 0 : here.number, setupHere(), meantFor(job.shop, entered));
    if (!told.refused) here.inputs = textOf(item_of(job, here.number, setupHere()));
    return { ...told, more: told.read && typedReading() ? 'The readings of its runs stay: change them in the order of work.' : '' };
  });
  if (!isKept) return;
  const { elements } = byId('inputs');
  // another key may have come meanwhile
  for (const { name, text } of entered.entries) if (elements[name].value === text) owed.delete(name);
}

const typedReading = () => Array.from(byId('inputs').querySelectorAll('.read input')).some(({ name }) => typedNames.has(name));

async function addItem(entered) {
  const setup = setupHere(), title = document.querySelector('h1').textContent;
  return editFromCard(await jobForNew(), job => {
    const unit = unitOf(job.shop);
    return { more: unit === entered.unit ? '' : `Bare numbers there are ${NAMED[unit]}.`, ...add_item(job, setup, title, meantFor(job.shop, entered)) };
  });
}

// What a card does to a job, and tells with the way there; what could not be kept has been told by `change`. Says whether it is done.
async function editFromCard(id, edit) {
  let saved, told;
  await change(id, job => {
    saved = job;
    told = edit(job);
  });
  if (!saved || unsaved.has(id)) return;
  if (told.refused) return void say(told.refused);
  const line = byId('job-added');
  const way = make('a', { href: `/job#${id}` }, 'See the job');
  line.replaceChildren(`${told.said} “${saved.title}”. ${told.more ?? ''} `, way);
  line.hidden = false;
  return true;
}

async function jobForNew() {
  const id = recall(LAST);
  return id && await isKept(id) ? id : keepNew(blank('My job'));
}

// A storage that gives nothing for a while does not say that a job is gone.
async function isKept(id) {
  try { return unsaved.has(id) || Boolean(await inTime(get(id, store))); } catch { return true; }
}

// What stands on the card at a tap or a key: an edit that has to be made again later is made with that.
function entriesOf(form, isWanted) {
  const entries = Array.from(new FormData(form), ([name, text]) => ({ name, text, kind: form.elements[name].dataset?.kind }));
  return { unit: form.elements.units.value, entries: entries.filter(each => each.name !== 'tape' && each.name !== 'units' && isWanted(each)) };
}

// Bare numbers keep their meaning in a job whose bare numbers are of another unit.
function meantFor(shop, { unit, entries }) {
  const isAlike = unit === unitOf(shop);
  return Object.fromEntries(entries.map(({ name, text, kind }) => [name, isAlike ? text : meantIn(unit, kind, text)]));
}

if (byId('add-to-job')) offerToAdd();
