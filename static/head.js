// The answer at the head of the screen: how much of it stays there while the rest of the card goes by under it.
import { readout } from './elements.js';

const root = document.documentElement, title = document.querySelector('.title');

// How much of the screen an answer holds that sticks to the top of it.
export const heldBy = answer => answer && getComputedStyle(answer).position === 'sticky' ? answer.offsetHeight : 0;

// An answer that would take half the screen even without its other settings, as large lettering makes it, does not
// stick; below one that does there is room for what is jumped to and for what has the focus.
export function roomFor(answer) {
  root.classList.add('past');
  root.classList.toggle('tall', Boolean(answer) && answer.offsetHeight > innerHeight * 0.4);
  const held = heldBy(answer);
  root.style.scrollPaddingTop = held ? `${held + 8}px` : '';
  fold(answer);
}

// Once its place is past, the first setting stays in sight, with what forbids it and what the scrap says: the others
// make way for what is measured, and leave their room behind, so that nothing moves under the finger.
function fold(answer = readout()) {
  if (!answer || isPadded()) return;
  const isGone = title?.getBoundingClientRect().bottom < 0;
  root.classList.remove('past');
  root.style.removeProperty('--left');
  const whole = heldBy(answer);
  if (!isGone || !whole) return;
  root.classList.add('past');
  root.style.setProperty('--left', `${whole - answer.offsetHeight}px`);
}

const isPadded = () => root.classList.contains('padded');
// a frame later, as room that is made changes the answer's height
const grown = new ResizeObserver(() => requestAnimationFrame(() => isPadded() || roomFor(readout())));

// Another answer is put in the place of one: of what is folded away no size tells.
function watch() {
  grown.disconnect();
  if (readout()) grown.observe(readout());
}

if (title) new IntersectionObserver(() => fold()).observe(title);
const answer = document.getElementById('answer') ?? document.getElementById('work');
if (answer) new MutationObserver(watch).observe(answer, { childList: true, subtree: answer.id === 'answer' });
watch();
