/** What the laws suite asks of one formula. Each check returns the faults it found, so that it can be shown to bite. */
import { divide, evaluate, isUnit, type MathNode, multiply, parse } from 'mathjs';
import type { AnyFormula } from '@/lib/calc/formula';

/** A repeatable source of numbers in [0, 1) (mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** One draw of inputs from the formula's ranges; ranges of more than two decades are drawn evenly in the logarithm. */
export function draw(formula: AnyFormula, next: () => number): Readonly<Record<string, number>> {
  const inputs: Record<string, number> = {};
  for (const symbol of Object.keys(formula.given)) {
    const [low, high] = formula.domain?.[symbol] ?? [0.1, 10];
    const share = next();
    inputs[symbol] = low > 0 && high / low > 100 ? low * (high / low) ** share : low + (high - low) * share;
  }
  return Object.freeze(inputs);
}

/** Runs the code of a formula on inputs drawn for it. */
export function run(formula: AnyFormula, inputs: Readonly<Record<string, number>>): number {
  // The inputs are drawn from the formula's own list of symbols, which is the type its code asks for.
  return formula.of(inputs as never);
}

const functions = new Set([
  'sin',
  'cos',
  'tan',
  'asin',
  'acos',
  'atan',
  'atan2',
  'sqrt',
  'cbrt',
  'exp',
  'log',
  'log10',
  'log2',
  'min',
  'max',
  'abs',
  'sign',
  'floor',
  'ceil',
  'round',
  'mod',
  'sinh',
  'cosh',
  'tanh',
  'pow',
]);

/** Symbols that the text uses without declaring them, or declares without using. */
export function symbolFaults(formula: AnyFormula): string[] {
  const used = new Set<string>();
  const faults: string[] = [];
  const walk = (node: MathNode, path: string, parent: MathNode | null) => {
    if (node.type === 'SymbolNode' && 'name' in node && typeof node.name === 'string') {
      const called = parent?.type === 'FunctionNode' && path === 'fn';
      if (!called) used.add(node.name);
      else if (!functions.has(node.name)) faults.push(`calls ${node.name}`);
    }
    node.forEach((child, childPath) => {
      walk(child, childPath, node);
    });
  };
  walk(parse(formula.text), '', null);
  const own = formula.residual ? [formula.symbol] : [];
  const declared = new Set([...Object.keys(formula.given), ...own]);
  for (const name of used) if (!declared.has(name) && name !== 'pi') faults.push(`uses ${name} undeclared`);
  for (const name of declared) if (!used.has(name)) faults.push(`does not use ${name}`);
  return faults;
}

const close = (a: number, b: number, relative: number, floor = 0) =>
  Math.abs(a - b) <= relative * Math.max(Math.abs(a), Math.abs(b), floor);

/** Differences between the text, worked by mathjs, and the code, over `runs` draws. */
export function agreementFaults(formula: AnyFormula, seed: number, runs: number): string[] {
  const next = seeded(seed);
  const text = parse(formula.text).compile();
  const faults: string[] = [];
  for (let i = 0; i < runs; i++) {
    const inputs = draw(formula, next);
    const result = run(formula, inputs);
    const where = `${formula.key} at ${JSON.stringify(inputs)}`;
    if (!Number.isFinite(result)) {
      faults.push(`${where}: the code gives ${result}`);
      continue;
    }
    if (run(formula, inputs) !== result) faults.push(`${where}: two runs differ`);
    if (formula.residual) {
      // A root is known to 1e-9 when the residual there is that small beside the residual a thousandth away.
      const at = (value: number) => Number(text.evaluate({ ...inputs, [formula.symbol]: value }));
      const aside = Math.abs(at(result + 1e-3 * Math.max(Math.abs(result), 1e-3)));
      const here = Math.abs(at(result));
      if (!(here <= 1e-6 * aside + 4e-16)) faults.push(`${where}: residual ${here} at ${result}`);
      if (!(aside > 1e-12)) faults.push(`${where}: the residual does not depend on ${formula.symbol}`);
    } else {
      const worked: unknown = text.evaluate({ ...inputs });
      if (typeof worked !== 'number' || !close(worked, result, 1e-9))
        faults.push(`${where}: the text gives ${String(worked)}, the code ${result}`);
    }
  }
  return faults;
}

/** Angles and plain numbers carry no dimension; everything else is a unit in the spelling of mathjs. */
function unitValue(unit: string): unknown {
  return evaluate(unit.replace(/\brad\b/g, '1'));
}

/** What is wrong with the dimensions of the text when every input carries its unit; null when they come out. */
export function dimensionFault(formula: AnyFormula, seed: number): string | null {
  const inputs = draw(formula, seeded(seed));
  const scope: Record<string, unknown> = {};
  const give = (symbol: string, value: number, unit: string) => {
    scope[symbol] = multiply(value, unitValue(unit) as number);
  };
  for (const [symbol, unit] of Object.entries(formula.given))
    give(symbol, inputs[symbol] ?? Number.NaN, unit);
  const result = run(formula, inputs);
  if (formula.residual) give(formula.symbol, result, formula.unit);
  const stated = formula.residual?.unit ?? formula.unit;
  try {
    const worked: unknown = parse(formula.text).compile().evaluate(scope);
    const ratio: unknown = divide(worked as number, unitValue(stated) as number);
    if (isUnit(ratio) || typeof ratio !== 'number')
      return `${formula.key}: the text comes out in ${String(worked)}, stated is ${stated}`;
    if (!formula.residual && !close(ratio, result, 1e-9))
      return `${formula.key}: with units ${ratio} ${stated}, without ${result}`;
    return null;
  } catch (error) {
    return `${formula.key}: ${error instanceof Error ? error.message : String(error)}`;
  }
}
