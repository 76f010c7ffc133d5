// A field is described once, on its schema, and refuses what does not fit with a sentence.
import { describe, expect, it } from 'vitest';
import {
  choice,
  fieldOf,
  flag,
  line,
  list,
  part,
  quantity,
  rangeSentence,
  unknowable,
  unknowableChoice,
} from '@/lib/quantity/field';

const width = { label: 'Width', symbol: 'b', unit: 'mm', min: 1, max: 300 } as const;

function sentences(result: { success: boolean; error?: { issues: { message: string }[] } }): string[] {
  return result.error?.issues.map((issue) => issue.message) ?? [];
}

describe('a described field', () => {
  it('carries unit, symbol, label and range with its schema', () => {
    expect(fieldOf(quantity(width))).toEqual({
      kind: 'quantity',
      ...width,
      whole: false,
      unknown: false,
      help: '',
    });
  });

  it('may be null only where it may be unknown', () => {
    expect(fieldOf(unknowable(width))).toMatchObject({ unknown: true });
    expect(unknowable(width).safeParse(null).success).toBe(true);
    expect(sentences(quantity(width).safeParse(null))).toEqual(['Width must be a number.']);
  });

  it('names its range and unit when a number lies outside', () => {
    expect(sentences(quantity(width).safeParse(0))).toEqual([rangeSentence('Width', 1, 300, 'mm')]);
    expect(sentences(quantity(width).safeParse(301))).toEqual(['Width must be between 1 and 300 mm.']);
  });

  it('takes the ends of its range', () => {
    expect(quantity(width).parse(1)).toBe(1);
    expect(quantity(width).parse(300)).toBe(300);
  });

  it('wants a whole number for a count', () => {
    const teeth = quantity({ ...width, label: 'Teeth', unit: '1', whole: true });
    expect(sentences(teeth.safeParse(12.5))).toEqual(['Teeth must be a whole number.']);
  });

  it('names what a choice may hold', () => {
    const kind = { label: 'Kind', options: { spur: 'Spur', helical: 'Helical, one way' } };
    expect(sentences(choice(kind).safeParse('bevel'))).toEqual(['Kind must be one of “spur”, “helical”.']);
    expect(unknowableChoice(kind).safeParse(null).success).toBe(true);
    expect(choice(kind).safeParse(null).success).toBe(false);
  });

  it('refuses in a line of words what neither database nor signature can carry', () => {
    const name = line({ label: 'Name', max: 5 });
    expect(name.parse('Zähne')).toBe('Zähne');
    expect(sentences(name.safeParse('sixsix'))).toEqual(['Name: at most 5 characters.']);
    for (const text of ['a\nb', 'a\0b', 'a\ud800']) {
      expect(sentences(name.safeParse(text))).toEqual(['Name must be one line of plain characters.']);
    }
  });

  it('wants yes or no for a flag', () => {
    expect(sentences(flag({ label: 'Guard' }).safeParse('yes'))).toEqual(['Guard must be yes or no.']);
  });

  it('refuses an unknown key of a part, so that a misspelt field is not dropped', () => {
    expect(part({ label: 'Rig' }, { width: quantity(width) }).safeParse({ width: 5, widht: 6 }).success).toBe(
      false,
    );
  });

  it('keeps the number of parts in a list within its limits', () => {
    const stages = list({ label: 'Stages', item: 'Stage', min: 1, max: 2 }, part({ label: 'Stage' }, {}));
    expect(sentences(stages.safeParse([]))).toEqual(['Stages: from 1 to 2.']);
    expect(stages.safeParse([{}, {}]).success).toBe(true);
  });
});
