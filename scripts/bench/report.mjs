// @ts-check
// The figures of a bench as lines to read.

/** @typedef {import('./benches.mjs').Figure} Figure */

/** @param {Figure} figure @returns {boolean} whether it has a limit and misses it; what is no number misses every limit */
export function missed({ value, bound, limit }) {
  if (limit === undefined) return false;
  return !(bound === 'at least' ? value >= limit : value <= limit);
}

/** @param {string} design @param {readonly Figure[]} figures @returns {string} */
export function table(design, figures) {
  const width = Math.max(...figures.map((f) => f.what.length));
  const lines = figures.map((figure) => {
    const { what, value, unit, bound, limit } = figure;
    const judged =
      limit === undefined ? '' : `${bound} ${limit} ${unit}: ${missed(figure) ? 'MISSED' : 'holds'}`;
    return `  ${what.padEnd(width)}  ${printed(value).padStart(8)} ${unit.padEnd(10)}  ${judged}`.trimEnd();
  });
  return [`Medians on this machine, for the design “${design}”:`, '', ...lines].join('\n');
}

/** @param {number} value */
function printed(value) {
  return value >= 100 ? value.toFixed(0) : value >= 10 ? value.toFixed(1) : value.toFixed(2);
}
