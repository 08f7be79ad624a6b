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

// What is said, as it is copied to another place: without the way to mend it, and where it is from.
export function bare(said) {
  const copy = said.cloneNode(true);
  for (const each of copy.querySelectorAll('a, .source')) each.remove();
  return copy;
}
