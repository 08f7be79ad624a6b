// On a card: its entries become an item of the job; on the card of an item they stay with it, at every key.
import { add_item, item_of, keep_item } from '/editing.js';
import { typedNames } from './answers.js';
import { USUAL_TAPE, byId, make } from './elements.js';
import { LAST, blank, change, hush, isKept, keepNew, others, read, recall, say, shopNow, unsaved } from './jobs.js';
import { meantIn } from './units.js';

const NAMED = { in: 'inches', mm: 'mm' };
const unitOf = ({ units = 'in' } = {}) => units;

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
