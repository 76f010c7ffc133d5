// Every formula of the library typeset: valid MathML with its own symbols, and the numbers where the symbols stood.
import { describe, expect, it } from 'vitest';
import { allFormulas } from '@/lib/calc/registry';
import { formulaMathML, numbersMathML } from '@/lib/ui/worked/formula-mathml';
import { numberMathML, symbolMathML } from '@/lib/ui/worked/number-mathml';

const used = (f: (typeof allFormulas)[number]) =>
  Object.keys(f.given).filter((name) => new RegExp(`(?<![\\w])${name}(?![\\w])`).test(f.text));

describe('every formula of the library', () => {
  it('is typeset as balanced MathML without style, error or gap', () => {
    expect(allFormulas.length).toBeGreaterThan(100);
    for (const f of allFormulas) {
      const typeset = formulaMathML(f);
      expect(typeset, f.key).toMatch(/^<math [^>]*display="block">/);
      expect(typeset, f.key).not.toMatch(/\sstyle=|merror|@\d+@|<script|annotation/);
      const opened = [...typeset.matchAll(/<[a-z][^>]*>/g)].filter(([tag]) => !tag.endsWith('/>')).length;
      expect(opened, f.key).toBe([...typeset.matchAll(/<\/[a-z]+>/g)].length);
    }
  });

  it('shows every input that its text uses', () => {
    for (const f of allFormulas) {
      const typeset = formulaMathML(f);
      expect(used(f).length, f.key).toBeGreaterThan(0);
      for (const name of used(f)) expect(typeset, `${f.key} ${name}`).toContain(symbolMathML(name));
    }
  });

  it('has its numbers put where its symbols stood', () => {
    for (const f of allFormulas) {
      const numbers = new Map(used(f).map((name, i) => [name, 1234.5 + i]));
      const filled = numbersMathML(f, numbers);
      for (const [name, value] of numbers) expect(filled, `${f.key} ${name}`).toContain(numberMathML(value));
    }
  });
});

describe('a typeset formula', () => {
  it('is a fraction with Greek letters and upright indices', () => {
    const html = formulaMathML({ symbol: 'sigma_F', text: 'F_t / (b * m_n)' });
    expect(html).toContain('<msub><mi>σ</mi><mtext>F</mtext></msub><mo>=</mo>');
    expect(html).toContain('<mfrac>');
    expect(html).toContain('<msub><mi>m</mi><mtext>n</mtext></msub>');
  });

  it('stands as zero on the left when it is a residual', () => {
    expect(formulaMathML({ symbol: 'x', text: 'x - 2 * a', residual: { unit: '1' } })).toContain(
      '<mn>0</mn><mo>=</mo>',
    );
  });

  it('brackets negative numbers and powers of ten, which stand as factors', () => {
    expect(numberMathML(-0.349)).toBe('<mrow><mo>(</mo><mo>−</mo><mn>0.349</mn><mo>)</mo></mrow>');
    expect(numberMathML(7.8e-5)).toContain('<msup><mn>10</mn><mrow><mo>−</mo><mn>5</mn></mrow></msup>');
    expect(numberMathML(412.3456)).toBe('<mn>412.3</mn>');
    expect(numberMathML(Number.NaN)).toBe('<mtext>–</mtext>');
  });
});
