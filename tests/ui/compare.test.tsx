// Before and after: triangle and cloud on what changed, signs and words beside colours, differences in the right unit.
import { describe, expect, it } from 'vitest';
import type { ChangedCheck, ChangedField, ChangedFigure, ChangedItem } from '@/lib/compare/comparison';
import { CheckChanges } from '@/lib/ui/compare/check-changes';
import { FieldChanges } from '@/lib/ui/compare/field-changes';
import { FigureChanges } from '@/lib/ui/compare/figure-changes';
import { FindingChanges } from '@/lib/ui/compare/finding-changes';
import { HeadlineChange } from '@/lib/ui/compare/headline-change';
import { markup, words } from './render';
import { finding, headline } from './samples';

const field: ChangedField = {
  ...{
    path: 'train.k3.b',
    label: 'face width',
    trail: ['Train', 'Stage 3'],
    before: '28 mm',
    after: '22 mm',
  },
  ...{ rawBefore: 28, rawAfter: 22, isNew: false },
};
const changed: ChangedCheck = {
  ...{
    key: 'pinion',
    section: 'gears',
    label: 'Stage 3 pinion',
    mode: 'life',
    required: 1.5,
    requiredBefore: 1.5,
    factorBefore: 1.73,
    factorAfter: 1.36,
  },
  ...{ statusBefore: 'holds', statusAfter: 'below', holdsToBefore: 78, holdsToAfter: 61, change: -0.37 },
  ...{ relative: -0.214, verdict: 'worse', crossed: true },
};
const warmer: ChangedFigure = {
  ...{
    key: 't',
    section: 'motor',
    label: 'Winding temperature',
    unit: 'degC',
    before: 353.15,
    after: 361.15,
    change: 8,
  },
  ...{ relative: 0.0227, better: 'less', verdict: 'worse' },
};

describe('changed fields', () => {
  const props = { fields: [field], items: [], before: 'Revision B', after: 'Revision C', letter: 'C' };

  it('stand with the old value left, then triangle with letter, then the new value in a cloud', () => {
    expect(words(<FieldChanges {...props} />)).toMatch(/Train, Stage 3: face width 28 mm C 22 mm/);
    expect(markup(<FieldChanges {...props} />)).toContain('<span class="cloud">22 mm</span>');
    expect(markup(<FieldChanges {...props} />)).toContain('aria-label="changed to"');
  });

  it('say of a field that the part had not before that it was not there', () => {
    const fresh = { ...field, before: '–', rawBefore: null, isNew: true };
    expect(words(<FieldChanges {...props} fields={[fresh]} />)).toContain('not there');
    expect(words(<FieldChanges {...props} />)).not.toContain('not there');
  });

  it('say so when nothing differs, and tell of items that came, went or moved', () => {
    expect(words(<FieldChanges {...props} fields={[]} />)).toBe(
      'No field differs between Revision B and Revision C.',
    );
    const stage: ChangedItem = {
      ...{ list: 'train.stages', item: 'Stage', id: 'k4', kind: 'added', from: null, to: 2, words: 'Spur' },
    };
    const load: ChangedItem = {
      ...{ list: 'duty.loads', item: 'Load', id: 'up', kind: 'removed', from: 1, to: null, words: '' },
    };
    const told = (item: ChangedItem) => words(<FieldChanges {...props} fields={[]} items={[item]} />);
    expect(told(stage)).toContain('A stage was added in place 2, counted from the motor (Spur).');
    expect(told({ ...stage, kind: 'removed', from: 2, to: null })).toContain(
      'The stage in place 2, counted from the motor (Spur), was removed.',
    );
    expect(told({ ...stage, kind: 'moved', from: 2, to: 3 })).toContain(
      'The stage in place 2 (Spur) moved to place 3.',
    );
    expect(told(load)).toContain('The load in place 1 was removed.');
  });
});

describe('changed checks', () => {
  it('give signed differences, and say in words what crossed its requirement', () => {
    const text = words(<CheckChanges caption="c" checks={[changed]} />);
    expect(text).toContain('−0.37');
    expect(text).toContain('(−21\u202f%)'.replace('\u202f', ' '));
    expect(text).toContain('Held before; falls short now.');
    expect(text).toContain('below');
  });

  it('show both requirements when they differ', () => {
    const stricter = { ...changed, requiredBefore: 1.2 };
    expect(words(<CheckChanges caption="c" checks={[stricter]} />)).toMatch(/1\.20 → becomes 1\.50/);
  });

  it('never pass a check that became not assessed off as unchanged', () => {
    const lost = {
      ...changed,
      factorAfter: null,
      statusAfter: 'not assessed' as const,
      change: null,
      relative: null,
    };
    expect(words(<CheckChanges caption="c" checks={[lost]} />)).toContain('is not assessed now.');
  });
});

describe('changed figures', () => {
  it('give a difference of temperatures without the offset of the scale, and no share of an arbitrary zero', () => {
    const text = words(<FigureChanges caption="c" figures={[warmer]} />);
    expect(text).toMatch(/\+8\.00 ?°C/);
    expect(text).not.toContain('%');
    expect(text).toContain('worse');
  });
});

describe('changed findings and headlines', () => {
  it('strike cleared findings and list raised ones', () => {
    const html = markup(
      <FindingChanges raised={[finding('new')]} cleared={[finding('old')]} restated={[]} />,
    );
    expect(html).toContain('<del>Text of old.</del>');
    expect(html).toContain('Raised (1)');
  });

  it('say when two methods were used', () => {
    const h = { ...headline, label: 'Stage 3 pinion' };
    const both = { headlineBefore: h, headlineAfter: h, methodBefore: '1.3', methodAfter: '1.4' };
    expect(words(<HeadlineChange comparison={both} before="B" after="C" />)).toContain(
      'different methods, 1.3 and 1.4',
    );
    const one = { ...both, methodAfter: '1.3' };
    expect(words(<HeadlineChange comparison={one} before="B" after="C" />)).not.toContain(
      'different methods',
    );
  });
});
