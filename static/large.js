// A setting as large as the screen, awake while it is looked at: first the answer's, then the others of the sheet.
import { bare, byId, make, readout } from './elements.js';

const LEAST = 80;

// `shown` names the setting that is large, `began` the one that was tapped.
let sheet, lock, seen, shown = '', began = '';
const first = () => document.querySelector('#sheet > .settings > li');
const large = () => [readout(), ...[...document.querySelectorAll('#sheet .settings li')].filter(each => each !== first() && each.querySelector('.grow'))];

// The answer has no name: what it says first may change with what is asked. A card inside another has its settings' names too.
const nameOf = place => place.matches('li') ? `${place.closest('.inner')?.getAttribute('aria-labelledby') ?? ''} ${place.dataset.of}` : '';

function enlarge(button) {
  const place = button.closest('li');
  shown = began = place && place !== first() ? nameOf(place) : '';
  if (!sheet) {
    sheet = make('dialog', { className: 'sheet', onclick: ({ target }) => target.matches('.next') || sheet.close(), onclose: put });
    sheet.setAttribute('aria-labelledby', 'sheet-label');
    seen = new MutationObserver(draw);
    document.body.append(sheet);
  }
  sheet.showModal();
  history.pushState('large', '');
  draw();
  for (const id of ['answer', 'sheet']) seen.observe(byId(id), { childList: true, subtree: id === 'answer', characterData: id === 'answer' });
  stayAwake();
}

// A card inside another gives its settings its own name.
function labelled(place) {
  const label = place.querySelector('.label')?.textContent ?? '', inner = place.closest('.inner')?.querySelector('h2').textContent;
  return inner ? `${inner}: ${label}` : label;
}

function draw() {
  const all = large(), at = Math.max(0, all.findIndex(each => each && nameOf(each) === shown)), from = all[at], next = all[(at + 1) % all.length];
  // the answer is gone: no old number stays on the screen
  if (!from) return sheet.close();
  const copy = (part, place = from) => place?.querySelector(part)?.cloneNode(true) ?? '';
  const set = copy('.big .number, .value .number'), letters = make('span', { className: 'fits' }, set || copy('.halt'), copy('.lean'));
  const number = make('p', { className: 'huge', id: 'sheet-number' }, letters, copy('.big .unseen, .value .unseen'));
  const buttons = make('div', { className: 'ways' }, make('button', { type: 'button' }, 'Close'));
  if (all.length > 1) {
    const label = labelled(next);
    buttons.prepend(make('button', { type: 'button', className: 'next', ariaLabel: `Next: ${label}`, onclick: () => { shown = nameOf(next); draw(); } }, label));
  }
  // the number is said with the button that gets the focus
  for (const button of buttons.children) button.setAttribute('aria-describedby', 'sheet-label sheet-number');
  // a setting that is left beside a stop is not to be set by
  const halt = set && document.querySelector('#answer .halt'), stop = halt ? bare(halt) : '';
  sheet.replaceChildren(make('div', {}, make('p', { id: 'sheet-label' }, labelled(from)), stop), number,
    make('p', {}, copy('.big .small, .value .small')), copy('.tape', at ? from : first()), buttons);
  // a tap goes on to the next, and a second tap to the one behind it
  (nameOf(from) === began ? buttons.lastChild : buttons.firstChild).focus();
  // letters that are large, or a screen that is small, leave the number less room than the rest: the tape makes way for it
  sheet.classList.remove('tight');
  sheet.classList.toggle('tight', fitted(number, letters) < LEAST);
  number.style.fontSize = `${Math.max(Math.floor(fitted(number, letters)), 28)}px`;
}

// The size of letters, in px, that fits the room that the rest leaves: measured at one size, then taken in proportion.
function fitted(number, letters) {
  number.style.fontSize = '50px';
  return 50 * Math.min(number.clientWidth / letters.offsetWidth, number.clientHeight / letters.offsetHeight);
}

function put() {
  seen.disconnect();
  lock?.release();
  lock = null;
  if (history.state === 'large') history.back();
  large().find(each => each && nameOf(each) === began)?.querySelector('.grow')?.focus({ preventScroll: true });
}

async function stayAwake() {
  // a phone that cannot, or will not now, goes dark as it always does
  const got = await navigator.wakeLock?.request('screen').catch(() => null);
  lock?.release();
  lock = got;
  if (!sheet.open) lock?.release();
}

document.addEventListener('click', ({ target }) => { if (target.matches('.grow')) enlarge(target); });
document.addEventListener('visibilitychange', () => { if (!document.hidden && sheet?.open) stayAwake(); });
addEventListener('popstate', () => { if (sheet?.open) sheet.close(); });
addEventListener('resize', () => { if (sheet?.open) draw(); });
