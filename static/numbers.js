// The phone's arithmetic, the twin of shopcalc/numbers.py: doubles, and Math where Python has mpmath.
const numbers = {
  ratio: (top, under) => top / under,
  sin: angle => Math.sin(angle * Math.PI / 180),
  tan: angle => Math.tan(angle * Math.PI / 180),
  asin: value => Math.asin(value) * 180 / Math.PI,
  atan: value => Math.atan(value) * 180 / Math.PI,
  root: square => Math.sqrt(square),
  attempt: (formula, known, numbers) => {
    try {
      const found = formula(new Proxy(known, sayWhenAbsent), numbers);
      return isWhole(found) ? found : null;
    } catch (fault) {
      if (fault !== ABSENT) throw fault;
      return null;
    }
  },
  plain: value => value,
};

// Rows and rankings hold numbers some levels down; a hole in one of them spoils the whole.
function isWhole(found) {
  if (Array.isArray(found)) return found.every(isWhole);
  if (found !== null && typeof found === 'object') return Object.values(found).every(isWhole);
  return typeof found === 'boolean' || Number.isFinite(found);
}

// A value that is not known stops the formula, as it does on the server: undefined would go on as a number.
const ABSENT = {};
const sayWhenAbsent = {
  get(known, name) {
    if (name in known) return known[name];
    throw ABSENT;
  },
};
