// The policy refuses style attributes and inline scripts: no component may write one, real assessments included.
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import { formulaByKey } from '@/lib/calc/registry';
import { starterKeys, starters } from '@/lib/design/starters/registry';
import { CheckTable } from '@/lib/ui/checks/check-table';
import { FigureTable } from '@/lib/ui/checks/figure-table';
import { FindingList } from '@/lib/ui/findings/finding-list';
import { Ladder } from '@/lib/ui/ladder/ladder';
import { CurvePlot } from '@/lib/ui/plot/curve-plot';
import { HeadlineSentence } from '@/lib/ui/sheet/headline-sentence';
import { WorkedSheet } from '@/lib/ui/worked/worked-sheet';
import { markup } from './render';

const links = { field: () => null, catalog: () => null };

describe.each(starterKeys)('the starter %s, assessed and drawn', (key) => {
  const a = assess(starters[key].document, { sheet: true });
  const html = markup(
    <>
      <HeadlineSentence
        headline={a.headline}
        label={a.checks.find((c) => c.key === a.headline.weakest)?.label ?? null}
      />
      <Ladder checks={a.checks} headline={a.headline} />
      <CheckTable caption="Checks" checks={a.checks} />
      <FigureTable caption="Figures" figures={a.figures} />
      <FindingList findings={a.findings} />
      {a.curves.map((c) => (
        <CurvePlot key={c.key} curve={c} />
      ))}
      <WorkedSheet steps={a.sheet} formulas={formulaByKey} partLabel={(p) => p} links={links} />
    </>,
  );

  it('carries no style attribute, no script, no handler', () => {
    expect(html).not.toMatch(/\sstyle=/);
    expect(html).not.toMatch(/<script/i);
    expect(html).not.toMatch(/\son[a-z]+=/);
  });

  it('prints no number that is none', () => {
    expect(html).not.toMatch(/NaN|Infinity|undefined/);
  });

  it('shows every step with its formula', () => {
    expect(a.sheet.length).toBeGreaterThan(10);
    expect(html).not.toContain('is not in this version of the method');
    expect(html.match(/class="step"/g)).toHaveLength(a.sheet.length);
  });

  it('gives every id once', () => {
    const ids = [...html.matchAll(/\sid="([^"]+)"/g)].map((m) => m[1]);
    expect(ids.length).toBe(new Set(ids).size);
  });
});
