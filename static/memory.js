// What this device remembers, and no other: the shop's own things, and what each card was last asked, the last used
// first. Loaded once the page is painted. What was kept is text that somebody typed: it goes into entries and addresses.
import { isLate, typedNames } from './answers.js';
import { SHOP, USUAL_TAPE, isStatic, show } from './elements.js';
import { keepMeaning, meantIn } from './units.js';

const LAST = 'shopcalc.last.1', MOST = 4;
const form = document.getElementById('inputs');
const slug = location.pathname.replace(/^\/|(\/|\/?index\.html)$/g, '');
const isItems = location.hash.startsWith('#item=');
// files from a static host cannot read an address: until a worker does, cards open with their starting values
const isRead = !isStatic || Boolean(navigator.serviceWorker?.controller);

function kept(name) {
  try {
    // a list of pairs of texts, whatever else may stand there
    return JSON.parse(localStorage.getItem(name)).filter(pair => pair.length === 2 && pair.every(each => typeof each === 'string'));
  } catch {
    return [];
  }
}

function keep(name, pairs) {
  try {
    localStorage.setItem(name, JSON.stringify([...pairs]));
  } catch {
    show('unkept', true);
  }
}

const unitOf = values => values.get('units') === 'mm' ? 'mm' : 'in';
const inUnit = (text, unit) => meantIn(unit, 'lengths', text);
const keptText = (shop, name, unit) => name === 'tape' || unit === unitOf(shop) ? shop.get(name) : inUnit(shop.get(name), unitOf(shop));

function used(card, query) {
  keep(LAST, [[card, query], ...kept(LAST).filter(([each]) => each !== card)]);
}

// The part of an address that says of the shop what is remembered; what is usual goes unsaid.
function shopQuery(own) {
  const shop = new Map(kept(SHOP)), query = new URLSearchParams();
  for (const name of own) if (shop.has(name)) query.set(name, shop.get(name));
  if (shop.has('tape') && shop.get('tape') !== USUAL_TAPE) query.set('tape', shop.get('tape'));
  if (unitOf(shop) === 'mm') query.set('units', 'mm');
  return query;
}

const address = (path, query) => String(query) ? `${path}?${query}` : path;

// The last used entries with the shop as it is now. In other units they mean something else: then only the card,
// which knows what is a length, can fill itself.
function linked(link, last) {
  const card = link.pathname, shop = new Map(kept(SHOP)), query = new URLSearchParams(last.get(card.slice(1)));
  if (!String(query)) return location.search ? link.search.slice(1) : shopQuery(link.dataset.own.split(' '));
  if (unitOf(query) !== unitOf(shop)) return '';
  for (const name of ['tape', ...link.dataset.own.split(' ')]) if (shop.has(name)) query.set(name, shop.get(name));
  return query;
}

function fillList() {
  const last = new Map(kept(LAST)), links = [...document.querySelectorAll('[data-own]')], section = document.getElementById('last');
  for (const link of links) link.setAttribute('href', address(link.pathname, linked(link, last)));
  for (const card of [...last.keys()].slice(0, MOST)) {
    const link = links.find(each => each.pathname === `/${card}`);
    if (link) section.lastElementChild.append(link.parentElement.cloneNode(true));
  }
  section.hidden = !section.querySelector('a');
  document.addEventListener('click', event => {
    const link = event.target.closest('[data-own]');
    if (link) used(link.pathname.slice(1), last.get(link.pathname.slice(1)) || '');
  });
}

function setUnits(unit) {
  const entry = form.elements.units;
  if (entry.value === unit || typedNames.has('units')) return;
  entry.value = unit;
  keepMeaning(unit);
}

// what was typed meanwhile goes before what was typed last time
function put(name, text) {
  if (typedNames.has(name)) return;
  const entry = form.elements[name];
  if (entry?.tagName === 'INPUT' || Array.from(entry?.options ?? []).some(each => each.value === text)) entry.value = text;
}

// A card that is opened with no entries in its address has those of the last time, and the shop's.
function fillForm() {
  const shop = new Map(kept(SHOP)), last = new URLSearchParams(new Map(kept(LAST)).get(slug));
  if (!shop.size && !String(last)) return;
  // a metric shop's card that was never used starts in its own whole millimetres, which only an answer has
  if (slug !== 'shop' && !String(last) && unitOf(shop) === 'mm' && !typedNames.size)
    return location.replace(address(location.pathname, shopQuery(ownNames())) + location.hash);
  if (String(last)) setUnits(unitOf(last));
  for (const [name, text] of last) put(name, text);
  if (shop.has('units')) setUnits(unitOf(shop));
  for (const name of shop.keys()) if (name !== 'units') put(name, keptText(shop, name, unitOf(new FormData(form))));
  form.dispatchEvent(new Event('input', { bubbles: true }));
}

const ownNames = () => [...form.querySelectorAll('[data-own]')].map(each => each.name);

function keepShop(names) {
  const shop = new Map(kept(SHOP)), now = new FormData(form), before = unitOf(shop);
  if (names.has('units') && unitOf(now) !== before) {
    for (const name of shop.keys()) if (name !== 'tape') shop.set(name, inUnit(shop.get(name), before));
    shop.set('units', unitOf(now));
  }
  for (const name of names) {
    const entry = form.elements[name];
    if (name === 'tape') shop.set(name, entry.value);
    else if ('own' in entry.dataset && !entry.hasAttribute('aria-invalid'))
      shop.set(name, unitOf(now) === unitOf(shop) ? entry.value : inUnit(entry.value, unitOf(now)));
  }
  keep(SHOP, shop);
}

// A trial belongs to the cut it was read from, and not to the next time.
function entries() {
  const kept = new FormData(form);
  for (const entry of form.querySelectorAll('.read input')) kept.delete(entry.name);
  return kept;
}

// What was typed is kept when the fingers have rested and it has been answered, so that no key waits for it; of the shop's
// own things only what could be read.
const touched = new Set([...typedNames].filter(name => form?.elements[name]));
function rested(event) {
  const { xhr } = event.detail;
  if (!touched.size || isLate(xhr) || (xhr.status !== 200 && xhr.status !== 422)) return;
  if ([...touched].some(name => name === 'tape' || name === 'units' || 'own' in form.elements[name].dataset)) keepShop(touched);
  touched.clear();
  if (slug === 'shop') history.replaceState(null, '', '/shop');
  else used(slug, String(new URLSearchParams(entries())));
}

function startAnew(event) {
  const link = event.target.closest('[data-anew]');
  if (!link) return;
  if (slug === 'shop') return keep(SHOP, []);
  used(slug, '');
  link.href = address(`/${slug}`, shopQuery(ownNames()));
}

if (document.getElementById('last') && isRead) fillList();
if (form) {
  document.addEventListener('input', event => { if (form.elements[event.target.name]) touched.add(event.target.name); });
  // an item's entries are its job's
  if (!isItems) document.addEventListener('htmx:afterRequest', rested);
  document.addEventListener('click', startAnew);
  // the card of a job's item has what the job says, also where that says nothing
  if (!location.search && !isItems && isRead) fillForm();
}
document.documentElement.dataset.memory = '';
