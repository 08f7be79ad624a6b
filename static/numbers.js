// The phone's arithmetic, the twin of shopcalc/numbers.py: doubles, and Math where Python has mpmath.
const numbers = {
  ratio: (top, under) => top / under,
  sin: angle => Math.sin(angle * Math.PI / 180),
  tan: angle => Math.tan(angle * Math.PI / 180),
  asin: value => real(Math.asin(value)) * 180 / Math.PI,
  atan: value => Math.atan(value) * 180 / Math.PI,
  root: square => real(Math.sqrt(square)),
  attempt: (formula, known, numbers) => {
    try {
      const found = formula(known, numbers);
      return isWhole(found) ? found : null;
    } catch (fault) {
      if (fault !== ABSENT) throw fault;
      return null;
    }
  },
  plain: value => value,
  kind_of: value => value === null ? 'nothing' : Array.isArray(value) ? 'list'
    : { string: 'text', number: 'number', boolean: 'truth' }[typeof value] ?? 'object',
};

// Rows and rankings hold numbers some levels down; a hole in one of them spoils the whole.
function isWhole(found) {
  if (Array.isArray(found)) return found.every(isWhole);
  if (found !== null && typeof found === 'object') return Object.values(found).every(isWhole);
  return typeof found === 'boolean' || typeof found === 'string' || Number.isFinite(found);
}

// What the server refuses to work out stops the formula here too; infinity would go on through a comparison.
function real(value) {
  if (Number.isNaN(value)) throw ABSENT;
  return value;
}

function divided(over, under) {
  if (under === 0) throw ABSENT;
  return over / under;
}

// A value that is not known stops the formula, as it does on the server: undefined would go on as a number.
const ABSENT = {};

function byShortName(known, names) {
  return new Proxy(known, {
    get(values, short) {
      const name = names[short];
      if (name in values) return values[name];
      throw ABSENT;
    },
  });
}
