/** Works entries of the corpus into rows: figure by figure, what the source prints beside what the library computes. */
import { type Basis, type Case, type Figure, inputsOf, type Work } from './case';
import { fromSI } from './units';

export interface Row {
  readonly id: string;
  readonly topic: string;
  readonly figure: string;
  readonly source: string;
  readonly basis: Basis | 'independent';
  /** In the unit of the source. Of a list, the value that comes nearest to its tolerance. */
  readonly published: number | boolean;
  readonly computed: number | boolean;
  readonly unit: string;
  /** How many values the figure has. */
  readonly values: number;
  /** |computed − published| and what it may be, in that unit. */
  readonly error: number;
  readonly tolerance: number;
  readonly holds: boolean;
}

type Result = number | readonly number[] | boolean | undefined;
type Compared = Pick<Row, 'published' | 'computed' | 'values' | 'error' | 'tolerance' | 'holds'>;

const missing: Omit<Compared, 'published' | 'values'> = {
  computed: Number.NaN,
  error: Number.POSITIVE_INFINITY,
  tolerance: 0,
  holds: false,
};

/** Sets a result in SI beside a printed figure. What is missing or has another length never holds. */
export function compare([target, unit, tolerance]: Figure, result: Result): Compared {
  if (typeof target === 'boolean' || typeof result === 'boolean') {
    const holds = target === result;
    return {
      published: Array.isArray(target) ? Number.NaN : target,
      computed: typeof result === 'boolean' ? result : Number.NaN,
      values: 1,
      error: holds ? 0 : 1,
      tolerance: 0,
      holds,
    };
  }
  const targets = [target].flat();
  const found = result === undefined ? [] : [result].flat();
  const allowed = (wanted: number, k: number) => {
    if (typeof tolerance === 'number') return tolerance * Math.abs(wanted);
    const list = [tolerance.abs].flat();
    return list.length === 1 ? (list[0] ?? 0) : (list[k] ?? 0);
  };
  if (found.length !== targets.length || targets.length === 0)
    return { published: targets[0] ?? Number.NaN, values: targets.length, ...missing };
  const compared = targets.map((wanted, k) => {
    const computed = fromSI(found[k] ?? Number.NaN, unit);
    const error = Math.abs(computed - wanted);
    const room = allowed(wanted, k);
    // A figure that is no number is worse than any error.
    const use = Number.isNaN(error) ? Number.POSITIVE_INFINITY : error / room;
    return { published: wanted, computed, error, tolerance: room, holds: error <= room, use };
  });
  const worst = compared.reduce((a, b) => (b.use > a.use ? b : a));
  const { use: _, ...rest } = worst;
  return { ...rest, values: targets.length, holds: compared.every((one) => one.holds) };
}

/** Works one case; a case that throws misses every figure, a figure that is worked but not printed is a row that misses. */
export function rowsOf(topic: string, id: string, recorded: Case, work: Work): readonly Row[] {
  let results: ReturnType<Work> = {};
  try {
    results = work(inputsOf(recorded));
  } catch (error) {
    process.stderr.write(`${id}: ${error instanceof Error ? error.message : error}\n`);
  }
  const about = { id, topic, source: recorded.source };
  const rows = Object.entries(recorded.expected).map(([name, figure]) => ({
    ...about,
    figure: name,
    basis: figure[3] ?? recorded.basis,
    unit: figure[1],
    ...compare(figure, results[name]),
  }));
  const unprinted = Object.keys(results)
    .filter((name) => !(name in recorded.expected))
    .map((name) => ({
      ...about,
      figure: `${name} (not in the case)`,
      basis: recorded.basis,
      unit: '-',
      published: Number.NaN,
      values: 0,
      ...missing,
    }));
  return [...rows, ...unprinted];
}
