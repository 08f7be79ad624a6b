// Keeps what an entry means when bare numbers change their unit. It is the grammar of `portable/measures/parsing.py` and `listed.py` as
// far as a unit needs it; a test holds the two against each other.

// When bare numbers change their unit, those that stand in the form keep theirs: 1 3/8 becomes 1 3/8 in.
export function keepMeaning(now) {
  const before = now === 'mm' ? 'in' : 'mm';
  for (const entry of document.querySelectorAll('#inputs [data-kind]')) {
    entry.value = meantIn(before, entry.dataset.kind, entry.value);
  }
}

// An entry as it is written where bare numbers are of another unit.
export function meantIn(unit, kind, text) {
  if (kind === 'length') return withUnit(text, unit);
  if (/^(lengths|pieces|stock)$/.test(kind)) return (unit === 'mm' ? pointed(text) : text).split(/[,;]/).map(each => lineMeant(each.trim(), unit)).join(', ');
  if (kind === 'temperature' && /^[-\u2212\d\s.\/\u00b0]+$/.test(text)) return `${text.trim()} ${unit === 'mm' ? 'C' : 'F'}`;
  return text;
}

// A comma for a point, which a metric row refuses, would begin the next length in inches.
const pointed = text => text.replace(/(^|[^\d,./])(\d+),(\d{1,2})(?!\d|,\d|[./])/g, '$1$2.$3');

// One of a row: a name before its first number, how many or a price behind the length, stay as they are.
function lineMeant(line, unit) {
  const [, name, length, tail] = /^((?!-)(?:(?!\.\d|\s-\d)[^\d(\u00bc-\u00be\u2150-\u215e])*|)(.*?)(\s*[x*\u00d7]\s*\d+(?:\s.*)?|\s*@.*)?$/i.exec(line) ?? [];
  return length ? `${name}${withUnit(length, unit)}${tail ?? ''}` : line;
}

// Of a sum, each part that says no unit gets one: 6 + 1/2 mm in inches is 6 in + 1/2 mm.
function withUnit(entry, unit) {
  const text = entry.trim();
  if (/^(?:\d*\.?\d+|\d+\.|(?:\d+[ -])?\d+[\/\u2044]\d+|\d*[ -]?[\u00bc-\u00be\u2150-\u215e])$/.test(text)) return `${text} ${unit}`;
  if (!text || !/[a-wyz"'\u2032\u2033\u2018-\u201d]/i.test(text)) return text && `(${text}) ${unit}`;
  const parts = partsOf(text);
  if (parts.length > 1) return parts.map((part, nth) => nth % 2 ? ` ${part} ` : withUnit(part, unit)).join('');
  const [, before, within, after] = /^([\d .\/]*[*x\u00d7]\s*)?\((.*)\)(\s*[*x\u00d7\/\u00f7][\d .\/]+)?$/i.exec(text) ?? [];
  return within ? `${before ?? ''}(${withUnit(within, unit)})${after ?? ''}` : text;
}

// The parts of a sum and the signs between them, outside of brackets.
function partsOf(text) {
  const parts = [''], marks = text.split(/( [-\u2010-\u2014\u2212] |[-\u2010-\u2014\u2212+()])/);
  let depth = 0;
  for (const [nth, mark] of marks.entries()) {
    if (mark === '(') depth += 1;
    if (mark === ')') depth -= 1;
    if (nth % 2 && !depth && mark !== ')' && !joins(parts.at(-1), mark, marks[nth + 1])) parts.push(mark.trim(), '');
    else parts[parts.length - 1] += mark;
  }
  return parts;
}

// A dash without spaces belongs to 3-5/8, and to 6'-6".
const joins = (before, mark, behind) => mark.length === 1 && mark !== '+'
  && (/(?:^|[^\d.\/])\d+$/.test(before) && /^(?:\d+[\/\u2044]\d|[\u00bc-\u00be\u2150-\u215e])/.test(behind) || /(?:['\u2032\u2018\u2019]|\b(?:ft|foot|feet)\.?)$/i.test(before));

// Before the answer is asked for, which is done while the event comes down from the document.
const choice = document.getElementById('shop-units'), opened = choice?.querySelector?.('[selected]')?.value;
addEventListener('input', ({ target }) => { if (target.id === 'shop-units') keepMeaning(target.value); }, true);
// changed before this script was there
if (opened && choice.value !== opened) {
  keepMeaning(choice.value);
  choice.form?.dispatchEvent(new Event('input', { bubbles: true }));
}
