// The answer at the head of the screen: how much of it stays there while the rest of the card goes by under it.
import { readout } from './elements.js';

const root = document.documentElement, title = document.querySelector('.title');

// How much of the screen an answer holds that sticks to the top of it.
export const heldBy = answer => answer && getComputedStyle(answer).position === 'sticky' ? answer.offsetHeight : 0;

const isPadded = () => root.classList.contains('padded');

// What the settings under the first take, where they make way for the form. With the pad open they have made way already.
function spare(answer) {
  const others = answer?.querySelector('.others'), high = others?.offsetHeight;
  return high && getComputedStyle(root).getPropertyValue('--folds') ? high + parseFloat(getComputedStyle(others).marginTop) : 0;
}

// An answer that would take half the screen even without them, as large lettering makes it, does not stick; below one
// that does there is room for what is jumped to and for what has the focus.
export function roomFor(answer) {
  if (!isPadded()) unfold();
  const high = answer ? answer.offsetHeight - spare(answer) : 0;
  root.classList.toggle('tall', high > innerHeight * 0.4);
  root.style.scrollPaddingTop = heldBy(answer) ? `${high + 8}px` : '';
  fold(answer);
}

// Once its place is past, the first setting stays in sight, with what forbids it and what the scrap says: the others
// make way for what is measured, and leave their room behind. Both at once, or the page would be scrolled in between.
function fold(answer = readout()) {
  if (isPadded()) return;
  unfold();
  const room = spare(answer);
  if (!room || !heldBy(answer) || title?.getBoundingClientRect().bottom >= 0) return;
  root.style.setProperty('--left', `${room}px`);
  root.classList.add('past');
}

function unfold() {
  root.classList.remove('past');
  root.style.removeProperty('--left');
}

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
