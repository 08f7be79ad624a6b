// Keys for a tape's fractions under the field that is being filled in.
import { bare, byId, make, readout } from './elements.js';
import { heldBy, roomFor } from './head.js';
// what is lit is shown over the keys: its listeners go first
import './light.js';
import { endsHere } from './taps.js';

const LENGTHS = '[data-kind^="length"]', ROWS = '[data-kind=lengths], [data-kind=pieces], [data-kind=stock], [data-set=lumber]';
const ONES = { 1: 'one', 3: 'three', 5: 'five', 7: 'seven', 9: 'nine', 11: 'eleven', 13: 'thirteen', 15: 'fifteen' };
const STRETCH = 120, TAP = 50;
const PARTS = { 2: 'half', 4: 'quarter', 8: 'eighth', 16: 'sixteenth' };
const root = document.documentElement;

// `field` is the one that the pad serves, `found` what stood in it.
let field = null, found = '', pad, stretch, title, heard, quiet, touched = false;
const key = (face, name, act, more) => {
  const made = make('button', { type: 'button', onclick: act, ...more }, face);
  if (name) made.setAttribute('aria-label', name);
  return made;
};

function build() {
  const put = mark => key(mark, { '/': 'slash', '.': 'point' }[mark], () => type(mark));
  const part = (top, under) => {
    const face = make('span', { className: 'fraction' }, make('span', {}, `${top}`), make('span', {}, `${under}`));
    return key(face, `${ONES[top]} ${PARTS[under]}${top > 1 ? 's' : ''}`, () => addFraction(`${top}/${under}`), { className: under > 8 ? 'part fine' : 'part' });
  };
  const parts = Array.from({ length: 15 }, (_, n) => {
    let top = n + 1, under = 16;
    while (top % 2 === 0) { top /= 2; under /= 2; }
    return part(top, under);
  });
  const between = () => key('', '', () => type(field.dataset.kind === 'lengths' ? ', ' : ' '), { className: 'between' });
  const sum = (face, said, text = ` ${face} `) => key(face, said, () => type(text));
  title = make('p', { className: 'pad-title' });
  heard = make('p', { className: 'unseen' });
  heard.setAttribute('role', 'status');
  const group = (name, ...keys) => make('div', { className: name }, ...keys);
  stretch = make('figure', { className: 'picture stretch', ariaHidden: 'true' });
  pad = make('div', { className: 'pad', id: 'pad', hidden: true },
    stretch,
    group('pad-top', title, heard, key('abc', 'abc: the phone\u2019s own keyboard', turn, { className: 'turn' }), key('Done', '', event => { done(); endsHere(event); }, { className: 'done' })),
    group('digits', ...Array.from('1234567890./', put)),
    group('parts', ...parts, between()),
    group('sums', sum('+', 'plus'), sum('\u2212', 'minus', ' - '), sum('\u00d7', 'times'), sum('\u00f7', 'divided by', ' / '), sum('(', 'open bracket', '('), sum(')', 'close bracket', ')'), between()),
    group('tools', key('\u2032', 'feet', () => addUnit("'")), key('\u2033', 'inches', () => addUnit('"')), key('mm', 'mm, millimetres', () => addUnit(' mm')),
      key('', '', () => move(-1), { className: 'less' }), key('', '', () => move(1), { className: 'more' }),
      key('\u232b', 'Delete', takeBack), key('C', 'Clear', () => change('', 0, field.value.length))));
  pad.setAttribute('role', 'group');
  // the field keeps the focus while keys are tapped
  for (const kind of ['pointerdown', 'mousedown']) pad.addEventListener(kind, event => event.preventDefault());
  document.querySelector('main').append(pad);
}

const metric = () => byId('shop-units').value === 'mm';
const step = () => metric() ? '1 mm' : `1/${byId('shop-tape').value} in`;
const name = (keys, face, said) => {
  for (const each of pad.querySelectorAll(keys)) {
    each.textContent = face;
    each.setAttribute('aria-label', said);
  }
};

// A phone's gesture to go back puts the keys away, as it does with its own, and does not leave the card.
let watcher = null;
function watchBack() {
  if (!('CloseWatcher' in self)) return;
  watcher = new CloseWatcher();
  watcher.onclose = close;
}

function open(served) {
  if (!pad) build();
  close();
  watchBack();
  field = served;
  found = field.value;
  const row = field.dataset.kind === 'lengths';
  pad.setAttribute('aria-label', `Keys for ${labelOf(field)}`);
  pad.classList.remove('turned');
  pad.classList.toggle('coarse', byId('shop-tape').value === '8');
  // bare numbers are millimetres: a fraction of the tape would be one of a millimetre, and sums stand in its place
  pad.classList.toggle('metric', metric());
  pad.classList.toggle('summing', 'sum' in field.dataset);
  name('.between', row ? ',' : '\u2423', row ? 'comma' : 'space');
  name('.less', `\u2212${step().split(' ')[0]}`, `${step()} less`);
  name('.more', `+${step().split(' ')[0]}`, `${step()} more`);
  field.inputMode = 'none';
  pad.hidden = false;
  root.classList.add('padded');
  // an answer that goes while something cannot be read leaves its room, or the field would move under the finger
  const answer = document.querySelector('#answer .readout');
  if (answer) root.style.setProperty('--held', `${answer.offsetHeight}px`);
  tell();
  showStretch();
  keepInSight();
  // WebKit brings what has the focus into sight by itself, a frame or two later, and knows nothing of the keys over it
  setTimeout(() => { if (field === served) keepInSight(); }, TAP);
}

// The drawing is out of sight while its numbers are typed: the stretch of it where the dimension stands, over the keys.
function showStretch() {
  const drawn = document.querySelector('#sheet .picture svg:has(text.lit)');
  stretch.hidden = !drawn;
  stretch.replaceChildren(drawn ? drawn.cloneNode(true) : '');
  if (drawn) stretch.firstChild.setAttribute('viewBox', stretchOf(drawn));
}

// What the pad says grows and shrinks with what is typed, and with a slip it has no drawing: none of it takes room from the field.
function followAnswer() {
  tell();
  if (!field) return;
  showStretch();
  if (taken() !== stood) keepInSight();
}

const taken = () => pad.offsetHeight + (readout()?.offsetHeight ?? 0);
let stood = 0;

// As large as on the drawing, the number in the middle: of a long dimension the ends may be out of sight.
function stretchOf(drawn) {
  const { y, width, height } = drawn.viewBox.baseVal, boxes = [...drawn.querySelectorAll('text.lit')].map(each => each.getBBox());
  const top = Math.min(...boxes.map(each => each.y)), bottom = Math.max(...boxes.map(each => each.y + each.height));
  const high = Math.min(height, Math.max(STRETCH, bottom - top + 16));
  return `0 ${Math.min(Math.max((top + bottom - high) / 2, y), y + height - high)} ${width} ${high}`;
}

// Between the answer, which may stick to the top, and the pad: the field with its note.
function keepInSight() {
  const answer = readout(), part = field.closest('.field');
  roomFor(answer);
  const held = () => heldBy(answer);
  const isTight = () => pad.offsetHeight + part.offsetHeight + held() > innerHeight;
  // the field has its note: what the pad says can be spared, then the answer
  pad.classList.remove('brief', 'blind');
  if (isTight()) pad.classList.add('blind');
  if (isTight()) pad.classList.add('brief');
  if (isTight()) root.classList.add('tall');
  tell();
  const room = innerHeight - pad.offsetHeight, top = held() + 8;
  const spare = room - top - part.offsetHeight;
  root.style.scrollPadding = `${top}px 0 ${pad.offsetHeight + Math.max(0, Math.min(8, spare))}px`;
  document.body.style.paddingBottom = `${pad.offsetHeight}px`;
  // where even the field with its label is too tall, the label is what goes out of sight
  part.scrollIntoView({ block: spare < 0 ? 'end' : 'nearest' });
  // and then its note, before any of what is typed
  if (spare < 0) field.scrollIntoView({ block: 'nearest' });
  stood = taken();
}

function close() {
  end();
  putAway();
}

function end() {
  if (!field) return;
  const served = field;
  field.removeAttribute('inputmode');
  field = null;
  watcher?.destroy();
  // a field that was filled by keys of a page has not changed for the browser
  if (served.value !== found) served.dispatchEvent(new Event('change', { bubbles: true }));
}

// What it covered comes back, unless another field has it by now.
function putAway() {
  if (field || !pad || pad.hidden) return;
  pad.hidden = true;
  root.classList.remove('padded');
  root.style.scrollPadding = document.body.style.paddingBottom = '';
  root.style.removeProperty('--held');
  roomFor(readout());
}

function done() {
  const served = field, answer = document.querySelector('#answer .grow, #answer a');
  // of a page without an answer a finger has the tick next, and keys go on from the field
  const next = answer ?? (touched ? served.closest('.job-run')?.querySelector('.tick input') : served);
  field.blur();
  close();
  const box = readout()?.getBoundingClientRect();
  if (box && (box.top < 0 || box.bottom > innerHeight)) readout().scrollIntoView();
  next?.focus({ preventScroll: true });
}

// To the phone's own keyboard and back; the bar stays, to come back by.
function turn() {
  const own = pad.classList.toggle('turned'), served = field;
  served.inputMode = own ? 'text' : 'none';
  const button = pad.querySelector('.turn');
  button.textContent = own ? '\u00bd' : 'abc';
  button.setAttribute('aria-label', own ? 'Keys for fractions' : 'abc: the phone\u2019s own keyboard');
  turning = true;
  served.blur();
  served.focus();
  turning = false;
}
let turning = false;

const labelOf = entry => document.querySelector(`label[for="${entry.id}"]`).textContent;

// Where the answer has no room to stay in sight: what forbids it, or what the scrap says.
const saidOf = answer => Array.from(answer?.querySelectorAll(answer.querySelector('.halt') ? '.halt' : '.correct') ?? []);

// What is being built, and how it is read; said when the fingers rest.
function tell() {
  if (!field) return;
  const note = byId(`note-${field.id.replace('in-', '')}`), help = byId(field.id.replace('in-', 'help-'));
  const said = heldBy(readout()) ? [] : saidOf(byId('answer')), set = said.length ? null : byId('answer');
  const [number, lean] = ['.number', '.lean'].map(each => set?.querySelector(`.big ${each}`)?.cloneNode(true) ?? '');
  title.replaceChildren(`${labelOf(field)} `, make('b', {}, field.value || '\u2013'),
    // lying down, a phone has no room for the answer but here
    ...number ? [make('span', { className: 'answered', ariaHidden: 'true' },
      make('span', { className: 'small' }, set.querySelector('.label').textContent), ' ', make('b', {}, number, ' ', lean))] : [],
    ...said.map(each => make('span', { className: each.matches('.halt') ? 'says stop' : 'says', ariaHidden: 'true' }, bare(each).textContent.trim())),
    ...[note, !note?.matches('.wrong') && help].filter(each => each?.textContent).map(each => make('span', { className: each === help ? 'where' : each.className }, each.textContent)));
  clearTimeout(quiet);
  quiet = setTimeout(() => { heard.textContent = field ? `${field.value}. ${note?.textContent ?? ''}` : ''; }, 900);
}

// Everything is changed as if it were typed, so that the answer follows.
function change(text, start, end) {
  field.setRangeText(text, start, end, 'end');
  field.dispatchEvent(new Event('input', { bubbles: true }));
}
const before = () => field.value.slice(0, field.selectionStart);
const type = text => change(text, field.selectionStart, field.selectionEnd);

function addFraction(text) {
  const had = before().match(/\d+\/\d*$/);
  if (had) change(text, had.index, field.selectionEnd);
  else type(/\d$/.test(before()) ? ` ${text}` : text);
}

// A unit goes behind what is there, also when all of it is selected.
function addUnit(text) {
  const end = field.selectionEnd;
  change(text, end, end);
}

function takeBack() {
  const { selectionStart: start, selectionEnd: end } = field;
  const last = before().match(/(?: ?\d+\/\d+| mm| [-+\u00d7/] |[^])$/);
  if (start < end) type('');
  else if (last) change('', last.index, end);
}

// One tick of the tape more or less: in the last number if it is in the step's unit, else as a sum.
function move(sign) {
  const next = stepped(field.value.trim(), sign, metric(), byId('shop-tape').value);
  change(next, 0, field.value.length);
}

function stepped(text, sign, inMm, division) {
  const [, head, , plus, behind, digits, unit] = text.match(/^((.*?)(?:( [+-] )|([,'t]\s*)|^))([\d./ ]+?)(\s*(?:in|"|mm))?$/) ?? [];
  const found = digits?.match(inMm ? /^(\d+(?:\.\d+)?)()()$/ : /^(?:(\d+)(?: (?=\d+\/))?)?(?:(\d+)\/(\d+))?$/);
  const isBehindFeet = /['t]/.test(behind ?? '');
  const fits = found && Number(found[3] || 1) > 0 && (!unit || /mm/.test(unit) === inMm) && !(isBehindFeet && inMm);
  if (!text) return sign > 0 ? written(1, inMm ? 1 : division, inMm) : text;
  const inAll = () => `${text} ${sign > 0 ? '+' : '-'} 1${inMm ? '' : '/' + division} ${inMm ? 'mm' : 'in'}`;
  // nothing is less than nothing
  if (!fits) return sign < 0 && !head && Number(digits) * (inMm ? 1 : division) < 1 ? text : inAll();
  const under = inMm ? 10 ** (found[1].split('.')[1] ?? '').length : Number(found[3] || 1);
  const top = inMm ? Math.round(found[1] * under) : (found[1] || 0) * under + Number(found[2] || 0);
  const tick = inMm ? 1 : division, size = (top * tick + (plus === ' - ' ? -sign : sign) * under);
  if (size === 0 && plus) return head.slice(0, -3);
  // behind feet there are less than twelve inches
  if (isBehindFeet && size >= 12 * under * tick) return inAll();
  return size < 0 ? text : head + written(size, under * tick, inMm) + (unit ?? '');
}

function written(top, under, inMm) {
  if (inMm) return `${top / under}`;
  let [a, b] = [top, under];
  while (b) [a, b] = [b, a % b];
  const whole = Math.floor(top / under), rest = top % under, part = rest ? `${rest / a}/${under / a}` : '';
  return whole && part ? `${whole} ${part}` : part || `${whole}`;
}

document.addEventListener('pointerdown', event => {
  touched = event.pointerType === 'touch';
  // before it has the focus, or the phone's own keyboard comes up first
  if (touched && event.target.matches(LENGTHS) && event.target !== field) event.target.inputMode = 'none';
}, { passive: true });
document.addEventListener('focusin', ({ target }) => {
  if (!target.matches('input[data-kind]')) return;
  if (target.matches(LENGTHS)) target.setAttribute('aria-keyshortcuts', 'Alt+ArrowDown');
  // the tap that gave the focus is over before anything moves under it
  if (touched && target !== field) requestAnimationFrame(() => document.activeElement === target && openAll(target));
});
// a value is typed anew; a length by the pad
function openAll(target) {
  if (target.matches(LENGTHS)) open(target);
  target.select();
}
document.addEventListener('focusout', ({ target, relatedTarget }) => {
  target.closest('.field')?.classList.remove('told');
  if (target.matches(LENGTHS) && target !== field) target.removeAttribute('inputmode');
  if (field && !turning && document.hasFocus() && relatedTarget !== field && !relatedTarget?.closest('.pad')
    && !(touched && relatedTarget?.matches(LENGTHS))) {
    end();
    // a tap on something else is over before that moves from under the finger
    setTimeout(putAway, touched ? TAP : 0);
  }
});
document.addEventListener('input', tell);
// A list that is pasted has its lines between commas: a field of one line would run them together.
document.addEventListener('paste', event => {
  const { target, clipboardData } = event, lines = clipboardData.getData('text').trim().split(/[\s,;]*[\r\n][\s,;]*/);
  if (lines.length < 2 || !target.matches(ROWS)) return;
  event.preventDefault();
  // as the browser pastes: no longer than the field may be, to be taken back, and told when the field is left
  document.execCommand('insertText', false, lines.join(', '));
});
document.addEventListener('keydown', event => {
  touched = false;
  const { target } = event;
  if (event.altKey && event.key === 'ArrowDown' && target.matches(LENGTHS)) {
    event.preventDefault();
    open(target);
    pad.querySelector('.digits button').focus();
  }
  // what lies over another field can be put away
  if (!field && event.key === 'Escape') target.closest('.field')?.classList.add('told');
  if (!field) return;
  if (event.key === 'Escape') {
    const served = field;
    close();
    served.focus();
  } else if (event.key === 'Enter' && target === field) done();
});
document.addEventListener('click', ({ target }) => { if (touched && target.matches(LENGTHS) && target !== field) openAll(target); });
document.addEventListener('htmx:afterRequest', followAnswer);
addEventListener('resize', () => { if (field) keepInSight(); else roomFor(readout()); });
