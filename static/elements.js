// Elements that the scripts of a page find and make.
export const byId = id => document.getElementById(id);
export const readout = () => document.querySelector('#answer .readout, #work .views');
export const show = (name, on) => document.querySelectorAll(`[data-signal="${name}"]`).forEach(each => { each.hidden = !on; });

export function make(tag, more, ...inside) {
  const made = Object.assign(document.createElement(tag), more);
  made.append(...inside);
  return made;
}

// An answer that would take half the screen, as large lettering makes it, does not stick to the top of it.
export function roomFor(answer) {
  document.documentElement.classList.toggle('tall', Boolean(answer) && answer.offsetHeight > innerHeight * 0.4);
}
