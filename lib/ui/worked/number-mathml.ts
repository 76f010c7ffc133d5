// Numbers and symbols as MathML.
import { symbolParts } from './symbol-parts';

/** A number with four significant digits; negative and exponent forms in brackets, as a factor needs them. */
export function numberMathML(value: number): string {
  if (!Number.isFinite(value)) return '<mtext>–</mtext>';
  const size = Math.abs(value);
  if (size !== 0 && (size < 1e-3 || size >= 1e6)) return inBrackets(exponentForm(value));
  const text = String(Number(value.toPrecision(4)));
  return value < 0 ? inBrackets(`<mo>−</mo><mn>${text.slice(1)}</mn>`) : `<mn>${text}</mn>`;
}

function exponentForm(value: number): string {
  const [head = '', power = ''] = Math.abs(value).toExponential(3).split('e');
  const sign = value < 0 ? '<mo>−</mo>' : '';
  const exponent = power.startsWith('-')
    ? `<mrow><mo>−</mo><mn>${power.slice(1)}</mn></mrow>`
    : `<mn>${power.slice(1)}</mn>`;
  return `${sign}<mn>${Number(head)}</mn><mo>·</mo><msup><mn>10</mn>${exponent}</msup>`;
}

function inBrackets(inner: string): string {
  return `<mrow><mo>(</mo>${inner}<mo>)</mo></mrow>`;
}

/** A symbol: slanted letter, upright index. */
export function symbolMathML(name: string): string {
  const { letter, index } = symbolParts(name);
  const base = `<mi>${escaped(letter)}</mi>`;
  return index === '' ? base : `<msub>${base}<mtext>${escaped(index)}</mtext></msub>`;
}

function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;');
}
