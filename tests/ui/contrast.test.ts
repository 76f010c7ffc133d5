// The inks against the sheets they stand on, by the contrast formula of WCAG 2.2 (relative luminance, 1.4.3 and 1.4.11).
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const css = readFileSync(new URL('../../lib/ui/styles/tokens.css', import.meta.url), 'utf8');
const [light = '', dark = ''] = css.split('@media (prefers-color-scheme: dark)');

function token(theme: string, name: string): string {
  const found = new RegExp(`--${name}: (#[0-9a-f]{6})`).exec(theme)?.[1];
  if (found === undefined) throw new Error(`tokens.css has no --${name}`);
  return found;
}

function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((i) => {
    const c = Number.parseInt(hex.slice(i, i + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [low = 0, high = 0] = [luminance(a), luminance(b)].toSorted((x, y) => x - y);
  return (high + 0.05) / (low + 0.05);
}

describe('the contrast formula', () => {
  it('gives 21 for black on white and 4.54 for #767676 on white (published: WCAG 2.2 understanding 1.4.3)', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
    expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
  });
});

describe.each([
  ['light', light],
  ['dark', dark],
])('in the %s theme', (_name, theme) => {
  it.each(['ink', 'second', 'accent', 'warning'])(
    '%s is readable as text on sheet, paper and graph paper',
    (ink) => {
      for (const ground of ['sheet', 'paper', 'grid']) {
        expect(
          contrast(token(theme, ink), token(theme, ground)),
          `${ink} on ${ground}`,
        ).toBeGreaterThanOrEqual(4.5);
      }
    },
  );
});
