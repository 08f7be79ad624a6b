// A light between a field and its dimension in the drawings, both ways, and between a mark and its place on the tape.
import { byId } from './elements.js';

// The values whose dimensions are lit.
let lit = [];

// What is drawn on a card inside another goes by that card's name too.
function keyOf({ dataset: { of } }, inner) {
  return inner && of ? `${inner.getAttribute('aria-labelledby').replace('inner-', '')}/${of}` : of;
}

// A field and its dimensions, in either direction.
function light(...of) {
  lit = of;
  for (const each of document.querySelectorAll('#sheet [data-of]')) each.classList.toggle('lit', of.includes(keyOf(each, each.closest('.inner'))));
}

// A finger is wider than a number on a drawing: the nearest within half a finger is meant.
function dimensionAt(picture, x, y) {
  let nearest = null, least = 26;
  for (const word of picture.querySelectorAll('text[data-of]:not([data-of=""])')) {
    const box = word.getBoundingClientRect();
    const off = Math.hypot(Math.max(box.left - x, x - box.right, 0), Math.max(box.top - y, y - box.bottom, 0));
    if (off < least) [nearest, least] = [word, off];
  }
  return nearest;
}

function follow(word) {
  const { of } = word.dataset, inner = word.closest('.inner'), key = keyOf(word, inner), entry = byId(`in-${of}`);
  if (entry && (!inner || entry.dataset.drawn.split(' ').includes(key))) return entry.focus();
  const within = inner ?? byId('sheet');
  light(key);
  within.querySelector(`li[data-of="${of}"], div[data-of="${of}"]`)?.scrollIntoView({ block: 'center' });
}

// A mark of a list, on the tape that is drawn above it.
function showPin(mark) {
  const run = mark.parentElement.parentElement.querySelector('.run'), pins = run.querySelectorAll('.pin');
  run.scrollLeft = pins[[...mark.parentElement.children].indexOf(mark)].getAttribute('x') - run.clientWidth / 2;
  run.scrollIntoView({ block: 'nearest' });
}

document.addEventListener('focusin', ({ target }) => {
  if (target.closest('#inputs')) light(...target.dataset.drawn ? target.dataset.drawn.split(' ') : []);
});
document.addEventListener('focusout', ({ target, relatedTarget }) => {
  if (target.closest('#inputs') && !relatedTarget?.closest('#inputs, .pad')) light();
});
document.addEventListener('click', ({ target, clientX, clientY }) => {
  const mark = target.closest('.run ~ .marks li');
  if (mark) return showPin(mark);
  const picture = target.closest('.picture svg'), word = picture && dimensionAt(picture, clientX, clientY);
  if (word) follow(word);
});
// a fresh sheet is dark
document.addEventListener('htmx:afterRequest', () => light(...lit));
