// The sentence at the head of a sheet: plain words for every case, and never silence about what is unknown.
import { describe, expect, it } from 'vitest';
import { HeadlineSentence } from '@/lib/ui/sheet/headline-sentence';
import { headlineText } from '@/lib/ui/sheet/headline-text';
import { markup, words } from './render';
import { headline } from './samples';

const label = 'Stage 3 pinion, tooth root';

describe('the headline sentence', () => {
  it('says which element breaks first, what is asked, the factor, what is required, and what can be forced', () => {
    expect(headlineText(headline, label, 'peak')).toBe(
      'Stage 3 pinion, tooth root, breaks first, at 61\u202fN·m on the output. The duty asks 45; the factor is 1.36 where 2.50 is required, and the drive can force 96.',
    );
  });

  it('chooses the verb by the way of failing', () => {
    expect(headlineText(headline, 'Case screws', 'slip')).toContain('Case screws slips first');
    expect(headlineText(headline, 'Motor winding', 'heat')).toContain('Motor winding overheats first');
    expect(headlineText(headline, 'Output hub', null)).toContain('Output hub gives way first');
  });

  it('says that the drive can force less than the weakest link holds, and not that it holds with its factor', () => {
    expect(headlineText({ ...headline, forced: 50 }, label)).toMatch(
      /The drive can force 50, which is less\.$/,
    );
  });

  it('says what the factor is against where it is not the duty: a rig is held to what can be forced', () => {
    const rig = { ...headline, holdsTo: 160, demanded: 60, forced: 438, factor: 160 / 438, required: 1.5 };
    expect(headlineText(rig, 'Rig, holding', 'slip')).toBe(
      'Rig, holding, slips first, at 160\u202fN·m on the output. The duty asks 60; against what can be forced the factor is 0.36 where 1.50 is required, and the drive can force 438.',
    );
  });

  it('says so when it cannot be told what the drive can force', () => {
    expect(headlineText({ ...headline, forced: null }, label)).toMatch(
      /What the drive can force is not assessed\.$/,
    );
  });

  it('never passes an assessment without any result off as safe', () => {
    const nothing = {
      ...headline,
      weakest: null,
      holdsTo: null,
      forced: null,
      factor: null,
      required: null,
      notAssessed: 9,
    };
    const text = headlineText(nothing, null);
    expect(text).toContain('No element could be assessed');
    expect(text).toContain('What the drive can force is not assessed.');
    expect(text).toContain('9 elements on the ladder are not assessed.');
  });

  it('adds that elements not assessed may be weaker', () => {
    expect(
      words(<HeadlineSentence headline={{ ...headline, notAssessed: 1 }} label={label} mode="peak" />),
    ).toMatch(/1 element on the ladder is not assessed and may give way sooner\.$/);
  });

  it('sets a factor below its requirement in the warning colour, and one above in ink', () => {
    expect(markup(<HeadlineSentence headline={headline} label={label} />)).toContain(
      '<b class="warn number">1.36</b>',
    );
    const good = { ...headline, factor: 2.8, forced: 50 };
    expect(markup(<HeadlineSentence headline={good} label={label} />)).not.toContain('warn');
  });
});
