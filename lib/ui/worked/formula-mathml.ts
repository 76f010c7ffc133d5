// A formula's text typeset once: mathjs reads it, KaTeX sets it as MathML with numbered gaps where the symbols stand,
// and the gaps are then filled with symbols or with numbers. Setting is slow, filling is not.

import katex from 'katex';
import { type MathNode, parse } from 'mathjs';
import type { AnyFormula } from '@/lib/calc/formula';
import { numberMathML, symbolMathML } from './number-mathml';

interface Setting {
  /** MathML with gaps `<mtext>@n@</mtext>`. */
  readonly markup: string;
  readonly symbols: readonly string[];
}

const settings = new Map<string, Setting>();
const constants = new Map([['pi', '<mi>π</mi>']]);

/** `sigma_F = K_F · F_t ∕ …` as a MathML block; a residual as `0 = …`. */
export function formulaMathML(formula: Pick<AnyFormula, 'symbol' | 'text' | 'residual'>): string {
  const left = formula.residual === undefined ? symbolMathML(formula.symbol) : '<mn>0</mn>';
  const { markup, symbols } = settingOf(formula.text);
  return block(`${left}<mo>=</mo>${fill(markup, (i) => symbolMathML(symbols[i] ?? ''))}`);
}

/** The right-hand side with its numbers put in, in SI base units; symbols without a number stay symbols. */
export function numbersMathML(
  formula: Pick<AnyFormula, 'text'>,
  numbers: ReadonlyMap<string, number>,
): string {
  const { markup, symbols } = settingOf(formula.text);
  const filled = fill(markup, (i) => {
    const name = symbols[i] ?? '';
    const value = numbers.get(name);
    return value === undefined ? symbolMathML(name) : numberMathML(value);
  });
  return block(`<mo>=</mo>${filled}`);
}

function block(inner: string): string {
  return `<math xmlns="http://www.w3.org/1998/Math/MathML" display="block">${inner}</math>`;
}

function fill(markup: string, with_: (index: number) => string): string {
  return markup.replace(/<mtext>@(\d+)@<\/mtext>/g, (_, index: string) => with_(Number(index)));
}

function settingOf(text: string): Setting {
  const known = settings.get(text);
  if (known !== undefined) return known;
  const symbols: string[] = [];
  const handler = (node: MathNode, options: object): string | undefined => {
    if (isConditional(node)) return cases(node, options);
    if (!isSymbol(node)) return undefined;
    if (!symbols.includes(node.name)) symbols.push(node.name);
    return `\\text{@${symbols.indexOf(node.name)}@}`;
  };
  const tex = parse(text)
    .toTex({ handler, parenthesis: 'auto' })
    .replace(/10\^\{\+/g, '10^{');
  const whole = katex.renderToString(tex, { output: 'mathml', displayMode: true, throwOnError: true });
  const inner = /<semantics>(.*)<annotation/s.exec(whole)?.[1] ?? '';
  // The policy refuses styles in the markup.
  const markup = withConstants(inner.replace(/ style="[^"]*"/g, ''), symbols);
  const setting = { markup, symbols };
  settings.set(text, setting);
  return setting;
}

interface Conditional extends MathNode {
  readonly condition: MathNode;
  readonly trueExpr: MathNode;
  readonly falseExpr: MathNode;
}

/** One case a row, also where the text nests them; the rule at their left is drawn by the style sheet. */
function cases(first: Conditional, options: object): string {
  const rows: string[] = [];
  let rest: MathNode = first;
  while (isConditional(rest)) {
    rows.push(`${rest.trueExpr.toTex(options)} & \\text{if}\\; ${rest.condition.toTex(options)}`);
    rest = bare(rest.falseExpr);
  }
  rows.push(`${rest.toTex(options)} & \\text{otherwise}`);
  return `\\begin{array}{ll}${rows.join(' \\\\ ')}\\end{array}`;
}

function bare(node: MathNode): MathNode {
  return isParenthesis(node) ? bare(node.content) : node;
}

function isParenthesis(node: MathNode): node is MathNode & { content: MathNode } {
  return 'isParenthesisNode' in node && node.isParenthesisNode === true;
}

function isConditional(node: MathNode): node is Conditional {
  return 'isConditionalNode' in node && node.isConditionalNode === true;
}

function withConstants(markup: string, symbols: readonly string[]): string {
  return fill(markup, (i) => constants.get(symbols[i] ?? '') ?? `<mtext>@${i}@</mtext>`);
}

function isSymbol(node: MathNode): node is MathNode & { name: string } {
  return 'isSymbolNode' in node && node.isSymbolNode === true && 'name' in node;
}
