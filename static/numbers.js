// The phone's arithmetic, the twin of shopcalc/numbers.py: doubles, and Math where Python has mpmath.
const numbers = {
  ratio: (top, under) => top / under,
  sin: angle => Math.sin(angle * Math.PI / 180),
  tan: angle => Math.tan(angle * Math.PI / 180),
  asin: value => Math.asin(value) * 180 / Math.PI,
  atan: value => Math.atan(value) * 180 / Math.PI,
  root: square => Math.sqrt(square),
  attempt: (formula, known, numbers) => {
    const found = formula(known, numbers);
    if (Array.isArray(found)) return found.every(Number.isFinite) ? found : null;
    return typeof found === 'boolean' || Number.isFinite(found) ? found : null;
  },
  plain: value => value,
};
