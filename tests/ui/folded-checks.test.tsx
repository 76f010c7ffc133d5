// Tables of checks on a sheet: what holds is folded to a line that says how near it comes, what does not is open.
import { describe, expect, it } from 'vitest';
import { CheckTables } from '@/lib/ui/checks/check-tables';
import { markup, words } from './render';
import { check, unknownCheck } from './samples';

const held = [
  check('a', { label: 'Leads, current', status: 'holds', factor: 3, required: 2 }),
  check('b', { label: 'Fuse, current', status: 'holds', factor: 1.1, required: 1 }),
];
const below = check('c', { label: 'Pack, current', status: 'below', factor: 0.9, required: 1 });

const folds = (html: string) => (html.match(/<details class="held"/g) ?? []).length;

describe('tables of checks on a sheet', () => {
  it('fold when every check holds, and name the check that is nearest to what it requires', () => {
    const tables = <CheckTables label="Supply" checks={held} fold />;
    expect(folds(markup(tables))).toBe(1);
    expect(words(tables)).toContain('2 checks hold');
    expect(words(tables)).toMatch(/nearest to what is required: Fuse, 1\.10 where 1\.00 is required/);
  });

  it('lose no row by folding', () => {
    const html = markup(<CheckTables label="Supply" checks={held} fold />);
    expect(html).toContain('id="check-a"');
    expect(html).toContain('id="check-b"');
  });

  it.each([
    ['a check falls short', [...held, below]],
    ['a check is not assessed', [...held, unknownCheck]],
  ])('stay open when %s', (_why, checks) => {
    expect(folds(markup(<CheckTables label="Supply" checks={checks} fold />))).toBe(0);
  });

  it('stay open when they hold the weakest link, or a check that a remark speaks of', () => {
    const pins = [{ number: 1, state: 'open' as const, at: 'a', href: '#thread-1' }];
    expect(folds(markup(<CheckTables label="Supply" checks={held} fold weakest="b" />))).toBe(0);
    expect(folds(markup(<CheckTables label="Supply" checks={held} fold pins={pins} />))).toBe(0);
  });

  it('fold what holds apart from what does not, when those that hold are many and compared with none', () => {
    const more = ['d', 'e'].map((key) => check(key, { label: `Switch ${key}, current`, required: 1 }));
    const unlike = [...held, ...more, below].map((c) => ({ ...c, demandLabel: `Demand on ${c.key}` }));
    const html = markup(<CheckTables label="Supply" checks={unlike} fold />);
    expect(folds(html)).toBe(1);
    expect(html.indexOf('id="check-c"')).toBeLessThan(html.indexOf('<details'));
    for (const key of ['a', 'b', 'd', 'e'])
      expect(html.indexOf(`id="check-${key}"`)).toBeGreaterThan(html.indexOf('<details'));
  });

  it('of kinds that are called alike say what is demanded too', () => {
    const of = (demandLabel: string, key: string) =>
      ['1', '2'].map((n) =>
        check(`${key}${n}`, { label: `Shaft ${n}, deflection`, demandLabel, required: 1 }),
      );
    const text = words(
      <CheckTables label="Shafts" checks={[...of('At the wheel', 'w'), ...of('At the pulley', 'p')]} fold />,
    );
    expect(text).toContain('Deflection, static (At the wheel): 2 checks hold');
    expect(text).toContain('Deflection, static (At the pulley): 2 checks hold');
  });

  it('are never folded where a signature binds them', () => {
    expect(folds(markup(<CheckTables label="Supply" checks={held} />))).toBe(0);
  });
});
