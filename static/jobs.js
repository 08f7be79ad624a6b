// Keeps the jobs on this device, for the page of the jobs and for the cards that put their entries there.
import { fill_in } from '/editing.js';
import { SHOP, byId } from './elements.js';
import { createStore, del, entries, get, update } from './vendor/idb-keyval-6.2.2.js';

let store = createStore('shopcalc', 'jobs');
export const others = channel();
// where the job worked on last is remembered
export const LAST = 'shopcalc.job';
const LONGEST_WAIT = 5000;
// What a shop can be set to, of what is chosen and not typed: a job is refused for any other.
const KNOWN = { tape: ['8', '16', '32', '64', '128'], units: ['in', 'mm'] };

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

export function shopNow() {
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

// A storage that gives nothing for a while does not say that a job is gone.
export async function isKept(id) {
  try { return unsaved.has(id) || Boolean(await inTime(get(id, store))); } catch { return true; }
}
