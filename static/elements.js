// Elements that the scripts of a page find and make.
export const SHOP = 'shopcalc.shop.1', USUAL_TAPE = '32';
export const isStatic = Boolean(document.querySelector('meta[name="shopcalc-static"]'));
export const byId = id => document.getElementById(id);
export const readout = () => document.querySelector('#answer .readout, #work .views');
export const show = (name, on) => document.querySelectorAll(`[data-signal="${name}"]`).forEach(each => { each.hidden = !on; });

export function make(tag, more, ...inside) {
  const made = Object.assign(document.createElement(tag), more);
  made.append(...inside);
  return made;
}

// How much of the screen an answer holds that sticks to the top of it.
export const heldBy = answer => answer && getComputedStyle(answer).position === 'sticky' ? answer.offsetHeight : 0;

// An answer that would take half the screen, as large lettering makes it, does not stick; below one that does there is
// room for what is jumped to and for what has the focus.
export function roomFor(answer) {
  const root = document.documentElement;
  root.classList.toggle('tall', Boolean(answer) && answer.offsetHeight > innerHeight * 0.4);
  const held = heldBy(answer);
  root.style.scrollPaddingTop = held ? `${held + 8}px` : '';
}
