import { describe, expect, it } from 'vitest';
import { clubCode, designNumber, letter, line, prose } from '@/lib/service/inputs/terms';

const takes = (schema: { safeParse(v: unknown): { success: boolean } }, value: unknown) =>
  schema.safeParse(value).success;

describe('a line', () => {
  const title = line('Title', 20);

  it('is trimmed and may be in any script', () => {
    expect(title.parse('  Łukasz’ Träger 腕 ')).toBe('Łukasz’ Träger 腕');
  });

  it('holds no line break, control character, separator or override of the reading direction', () => {
    for (const bad of [
      'a\nb',
      'a\rb',
      'a\tb',
      'a\u0000b',
      'a\u007fb',
      'a\u0085b',
      'a\u2028b',
      'a\u202eb',
      'a\u2066b',
    ])
      expect(takes(title, bad), JSON.stringify(bad)).toBe(false);
  });

  it('is neither empty nor too long', () => {
    expect(title.safeParse('   ').error?.issues[0]?.message).toBe('Title is needed.');
    expect(title.safeParse('x'.repeat(21)).error?.issues[0]?.message).toBe('Title: at most 20 characters.');
  });
});

describe('prose', () => {
  const reason = prose('Reason', 10, 40);

  it('may have line breaks and tabs, and no other control character', () => {
    expect(takes(reason, 'first line\n\tsecond line')).toBe(true);
    expect(takes(reason, 'first line\u0000')).toBe(false);
    expect(takes(reason, 'first line\u202e')).toBe(false);
    expect(takes(reason, 'first line \udc00')).toBe(false);
    expect(takes(reason, 'first line 🔧')).toBe(true);
  });

  it('says how much is asked for', () => {
    expect(reason.safeParse('ok').error?.issues[0]?.message).toContain('at least 10');
  });
});

describe('names in addresses', () => {
  it('are taken as they are written and in no other way', () => {
    expect([takes(clubCode, 'QS'), takes(designNumber, 'QS-014'), takes(letter, 'AB')]).toEqual([
      true,
      true,
      true,
    ]);
    for (const bad of ['qs', 'Q', "QS'--", '../QS', 'QS\n', ' QS']) {
      expect(takes(clubCode, bad), bad).toBe(false);
      expect(takes(designNumber, `${bad}-014`), bad).toBe(false);
    }
    for (const bad of ['QS-14', 'QS-0014567', 'QS014', 'QS-014 '])
      expect(takes(designNumber, bad), bad).toBe(false);
    for (const bad of ['', 'a', 'A1', 'ABCD']) expect(takes(letter, bad), bad).toBe(false);
  });
});
