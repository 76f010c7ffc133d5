// Sheet, title block, hold points, signatures, cautions, findings, plots: what must always be there.
import { describe, expect, it } from 'vitest';
import type { Curve } from '@/lib/assess/assessment';
import { FindingList } from '@/lib/ui/findings/finding-list';
import { Caution } from '@/lib/ui/notices/caution';
import { Failure, Notice } from '@/lib/ui/notices/notice';
import { CurvePlot } from '@/lib/ui/plot/curve-plot';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { TitleBlock, type TitleBlockProps } from '@/lib/ui/sheet/title-block';
import { View } from '@/lib/ui/sheet/view';
import { HoldPoints } from '@/lib/ui/signing/hold-points';
import { Signature } from '@/lib/ui/signing/signature';
import { markup, words } from './render';
import { finding } from './samples';

const hash = '9f3c41d0aa12bb34cc56dd78ee90ff12233445566778899aabbccddeeff00e7e';
const block: TitleBlockProps = {
  ...{
    club: 'Quay Shed',
    title: 'Lock-gate lifter',
    drawing: 'QS-014',
    revision: 'C',
    standing: 'Under review',
  },
  ...{ issued: { day: '2026-11-21', hour: '14:05 UTC' }, drawnBy: 'Wren', hash, method: '1.4' },
};

describe('the title block', () => {
  it('says club, title, number, revision, standing, issue, author, record and method', () => {
    const text = words(<TitleBlock {...block} />);
    for (const part of [
      'Quay Shed',
      'Lock-gate lifter',
      'QS-014',
      'Under review',
      '2026-11-21',
      '14:05 UTC',
      'Wren',
      '9f3c 41d0 … 0e7e',
      'method 1.4',
    ]) {
      expect(text).toContain(part);
    }
    expect(markup(<TitleBlock {...block} />)).toContain('<h1>Lock-gate lifter</h1>');
  });

  it('says of a draft that it has no letter, no issue and no fixed record', () => {
    const text = words(<TitleBlock {...block} revision={null} issued={null} hash={null} />);
    expect(text).toContain('Draft no letter yet');
    expect(text).toContain('Not issued');
    expect(text).toContain('Not fixed');
  });
});

describe('the sheet', () => {
  const html = markup(
    <Sheet title={<TitleBlock {...block} />} margin="Findings" marginLabel="Findings">
      <View letter="A" title="What holds">
        x
      </View>
    </Sheet>,
  );

  it('is the main landmark that the skip link leads to, its margin a named aside', () => {
    expect(html).toContain('<main id="content"');
    expect(html).toContain('<aside class="sheet-margin" aria-label="Findings">');
  });

  it('heads every view with an h2 that names its section; zone marks are for the eye only', () => {
    expect(html).toContain('<section class="view" id="view-a" aria-labelledby="view-a-title">');
    expect(html).toContain('<h2 id="view-a-title">What holds</h2>');
    expect(html.match(/class="sheet-zones [^"]*" aria-hidden="true"/g)).toHaveLength(4);
  });
});

describe('signing', () => {
  it('shows state and blockers of every hold point in words', () => {
    const points = [
      {
        key: 'p',
        name: 'Proof load',
        state: 'held' as const,
        detail: 'not released',
        blockers: ['2 checks below requirement'],
      },
    ];
    expect(words(<HoldPoints points={points} />)).toBe(
      'Proof load Held not released 2 checks below requirement',
    );
  });

  it('shows name, role, meaning, statement, moment and record of a signature; a void one says why', () => {
    const props = {
      signer: 'Moss',
      role: 'safety officer',
      meaning: 'Releases bench spin',
      statement: 'I have read it.',
    };
    const text = words(
      <Signature {...props} at="2026-11-22T09:10:00Z" hash={hash} voided="Revision D was issued." />,
    );
    for (const part of [
      'Moss',
      'safety officer',
      'Releases bench spin',
      'I have read it.',
      '2026-11-22 09:10 UTC',
      '9f3c41d0 … 0e7e',
      'Void: Revision D was issued.',
    ]) {
      expect(text).toContain(part);
    }
  });
});

describe('notices', () => {
  it('give a caution its signal word beside the triangle', () => {
    expect(words(<Caution grade="danger">Stand clear.</Caution>)).toBe('danger Stand clear.');
  });

  it('announce what was done politely and what failed at once', () => {
    expect(markup(<Notice>Posted.</Notice>)).toContain('role="status"');
    expect(markup(<Failure title="Not signed.">Why.</Failure>)).toContain('role="alert"');
  });
});

describe('findings', () => {
  it('stand gravest first with class, advice, reason and source in words', () => {
    const text = words(<FindingList findings={[finding('m'), finding('c', { class: 'critical' })]} />);
    expect(text.indexOf('critical')).toBeLessThan(text.indexOf('minor'));
    for (const part of ['Text of c.', 'Advice of c.', 'Reason of c.', 'Source: common practice, no source'])
      expect(text).toContain(part);
  });
});

describe('a plot', () => {
  const curve: Curve = {
    ...{
      key: 'c',
      section: 'drive',
      label: 'Torque over speed',
      xLabel: 'speed',
      xUnit: 'rpm',
      yLabel: 'torque',
      yUnit: 'N m',
      inputs: [],
    },
    lines: ['current', 'voltage'].map((label, k) => ({
      label,
      points: [0, 5, 10].map((x) => ({ x, y: 90 - k * x })),
    })),
    marks: [{ label: 'duty', x: 5, y: 45 }],
  };

  it('has a summary with units, line types that differ, and its numbers in tables', () => {
    const html = markup(<CurvePlot curve={curve} />);
    expect(html).toMatch(
      /aria-label="Torque over speed\. torque over speed\. current: from 90\.0.N·m at 0.rpm/,
    );
    expect(html).toContain('plot-line-0');
    expect(html).toContain('plot-line-1');
    expect(html.match(/<caption/g)).toHaveLength(2);
  });

  it('letters its marks and says them in words with their numbers', () => {
    expect(words(<CurvePlot curve={curve} />)).toMatch(/\+ a duty: 45\.0 ?N·m at 47\.7 ?rpm/);
  });

  it('says so when there is nothing to draw', () => {
    expect(words(<CurvePlot curve={{ ...curve, lines: [{ label: 'x', points: [] }] }} />)).toContain(
      'not assessed',
    );
  });
});
