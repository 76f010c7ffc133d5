/** The command fails where it should: on a miss, an unknown name, a case that did not run, a contradicted test. */
import { describe, expect, it } from 'vitest';
import { shelves } from './corpus';
import { type Corpus, validate } from './validate';

const bearings = shelves.filter(({ topic }) => topic === 'bearings');
const corpus: Corpus = { shelves: bearings, independents: [], tests: () => [] };
const [shelf] = bearings;
if (shelf === undefined) throw new Error('There are no bearings in the corpus.');

const held = {
  test: 'T00',
  quantity: 'life',
  supports: 'rank',
  measured: 'longer',
  predicted: 'longer',
  ratio: null,
  verdict: 'agrees',
  because: 'for the sake of the test',
} as const;

describe('npm run validate', () => {
  it('works a whole shelf, counts by basis and ends well', () => {
    const { code, text } = validate([], corpus);
    expect(text.split('\n').at(-1)).toMatch(/^\d+ of \d+ cases ran\. \d+ published checks, .*; 0 missed$/);
    expect(code).toBe(0);
  });

  it('prints the case that is asked for, with its source, and no other', () => {
    const { code, text } = validate(['BRG-03'], corpus);
    expect(code).toBe(0);
    expect(text).toContain(shelf.cases['BRG-03']?.source);
    expect(text).not.toContain('BRG-04 ');
  });

  it('ends with 2 on a name that it does not know', () => {
    expect(validate(['BRG-03', 'BRG-99'], corpus)).toEqual({ code: 2, text: 'No case or topic: BRG-99' });
  });

  it('ends with 1 on a miss, and says which', () => {
    const works = { ...shelf.works, 'BRG-03': () => ({ L10: 1e6, L10h: 3600 * 940 }) };
    const { code, text } = validate([], { ...corpus, shelves: [{ ...shelf, works }] });
    expect(code).toBe(1);
    expect(text).toMatch(/Missed:\n.*\n.*\nBRG-03 +L10 /);
    expect(text).toContain('; 1 missed');
  });

  it('ends with 1 when a work throws, for no figure of it holds', () => {
    const works = {
      ...shelf.works,
      'BRG-03': () => {
        throw new Error('no such formula');
      },
    };
    expect(validate([], { ...corpus, shelves: [{ ...shelf, works }] }).text).toContain('; 2 missed');
  });

  it('ends with 1 when fewer cases run than are listed', () => {
    const { 'BRG-03': _, ...works } = shelf.works;
    const { code, text } = validate([], { ...corpus, shelves: [{ ...shelf, works }] });
    expect(code).toBe(1);
    expect(text).toContain('BRG-03 is neither worked nor excused');
    expect(text).toContain('BRG-03 is listed and did not run');
  });

  it('ends with 1 when a gear test contradicts, not when it merely differs', () => {
    const outcome = (verdict: 'agrees' | 'contradicted' | 'differs') =>
      validate([], { ...corpus, tests: () => [{ ...held, verdict }] }).code;
    expect(outcome('agrees')).toBe(0);
    expect(outcome('differs')).toBe(0);
    expect(outcome('contradicted')).toBe(1);
  });
});
