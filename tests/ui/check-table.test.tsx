// The table of checks: captions, scopes, units, words beside colours, and reasons for what is not assessed.
import { describe, expect, it } from 'vitest';
import { CheckTable } from '@/lib/ui/checks/check-table';
import { FigureTable } from '@/lib/ui/checks/figure-table';
import { byKind } from '@/lib/ui/checks/kinds';
import { markup, words } from './render';
import { check, unknownCheck } from './samples';

const rows = [
  check('pinion', { label: 'Stage 3 pinion, tooth root' }),
  check('wheel', { demand: 10e6 }),
  unknownCheck,
];

describe('the check table', () => {
  const html = markup(<CheckTable caption="Checks of the teeth" checks={rows} workedHref="/w" />);

  it('has a caption, column heads and row heads with their scope', () => {
    expect(html).toContain('<caption class="for-ear">Checks of the teeth</caption>');
    expect(html.match(/<th scope="col"/g)).toHaveLength(7);
    expect(html.match(/<th scope="row">/g)).toHaveLength(3);
  });

  it('says BELOW in words beside the colour, and HOLDS for what holds', () => {
    expect(html).toContain('<span class="mark" data-mark="below">below</span>');
    expect(html).toContain('<span class="mark" data-mark="holds">holds</span>');
  });

  it('never leaves a check that is not assessed blank: the words, the reason, and a dash that is spoken', () => {
    const text = words(<CheckTable caption="c" checks={[unknownCheck]} />);
    expect(text).toContain('Not assessed: no load rating is entered.');
    expect(text).toMatch(/– not assessed .*– not assessed .*– not assessed/);
    expect(html).toContain('data-mark="not-assessed"');
    expect(html).not.toMatch(/<td[^>]*><\/td>/);
  });

  it('gives every quantity its unit', () => {
    const text = words(<CheckTable caption="c" checks={[rows[0] ?? unknownCheck]} />);
    expect(text).toMatch(/26\.4 ?MPa/);
    expect(text).toMatch(/36\.0 ?MPa/);
    expect(text).toMatch(/61\.0 ?N·m/);
  });

  it('leads to the worked step of a check', () => {
    expect(html).toContain('href="/w#step-pinion.S"');
  });

  it('says that a check has no torque limit, which is not the same as not assessed', () => {
    const heat = check('heat', { onLadder: false, holdsTo: null });
    expect(words(<CheckTable caption="c" checks={[heat]} />)).toContain('no torque limit');
  });

  it('names demand and capacity of each row when rows differ', () => {
    const mixed = [check('a'), check('b', { demandLabel: 'Pressure' })];
    const text = words(<CheckTable caption="c" checks={mixed} />);
    expect(text).toContain('Demand');
    expect(text).toContain('Pressure');
    expect(text).toContain('Root stress');
  });

  it('shows what a result rests on when it rests on memory', () => {
    const caveat = check('a', { caveat: 'From memory: a strength.' });
    expect(words(<CheckTable caption="c" checks={[caveat]} />)).toContain('From memory: a strength.');
  });

  it('says a caveat once, with the rows it is true of when it is not true of all', () => {
    const caveat = 'From memory: a strength.';
    const some = [
      check('a', { label: 'Stage 1 pinion, tooth root', caveat }),
      check('b', { label: 'Stage 2 pinion, tooth root', caveat }),
      check('c', { label: 'Stage 3 pinion, tooth root' }),
    ];
    const text = words(<CheckTable caption="Tooth root" oneKind checks={some} />);
    expect(text.split(caveat)).toHaveLength(2);
    expect(text).toContain(`Stage 1 pinion; Stage 2 pinion. ${caveat}`);
  });

  it('sets checks of one kind in a table of their own and loses none', () => {
    const all = [
      check('a', { label: 'Stage 1 pinion, tooth root' }),
      check('b', { label: 'Leads, current', demandLabel: 'Current' }),
      check('c', { label: 'Stage 2 pinion, tooth root' }),
    ];
    const kinds = byKind(all);
    expect(kinds.map((k) => k.checks.map((c) => c.key))).toEqual([['b'], ['a', 'c']]);
    expect(kinds[1]?.label).toMatch(/^Tooth root, /);
  });

  it('sets the balloon of a remark beside its check, with state in words', () => {
    const pins = [{ number: 2, state: 'open' as const, at: 'pinion', href: '#thread-2' }];
    expect(markup(<CheckTable caption="c" checks={rows} pins={pins} />)).toContain(
      'aria-label="Thread 2, open"',
    );
  });
});

describe('the figure table', () => {
  it('says why a figure has no value', () => {
    const figure = {
      ...{
        key: 'j',
        section: 'gears' as const,
        label: 'Backlash',
        symbol: 'j_out',
        unit: 'deg' as const,
        value: null,
      },
      ...{
        better: 'less' as const,
        missing: 'the tolerance of stage 1 is not entered.',
        step: null,
        origin: null,
        headline: true,
      },
    };
    const text = words(<FigureTable caption="c" figures={[figure]} />);
    expect(text).toContain('Not assessed: the tolerance of stage 1 is not entered.');
    expect(text).toContain('j out');
  });
});
