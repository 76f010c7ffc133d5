// A number followed back on the page: its factor worked, its steps folded into one another, its ends in words.
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import type { Check } from '@/lib/assess/assessment';
import { catalogRow } from '@/lib/assess/trace/rows';
import { rootsOf, type Subject } from '@/lib/assess/trace/subject';
import { traceOf } from '@/lib/assess/trace/trace';
import { formulaByKey } from '@/lib/calc/registry';
import { starters } from '@/lib/design/starters/registry';
import type { TraceSetting } from '@/lib/ui/trace/setting';
import { TraceView } from '@/lib/ui/trace/trace-view';
import { markup, words } from './render';
import { check as sample } from './samples';

const a = assess(starters.lifter.document, { sheet: true });

function setting(subject: Subject): TraceSetting {
  return {
    trace: traceOf(a.sheet, rootsOf(subject)),
    id: 'tx',
    formulas: formulaByKey,
    partLabel: (path) => `part ${path}`,
    field: (path) => ({ text: `field ${path}`, href: `#field-${path}` }),
    entered: (path) => `entered ${path}`,
    row: catalogRow,
    rowHref: (key) => `#row-${key}`,
    formulaHref: (key) => `#formula-${key}`,
  };
}

function shown(subject: Subject) {
  return <TraceView subject={subject} setting={setting(subject)} />;
}

function rootCheck(mode: Check['mode']): Check {
  const found = a.checks.find((c) => c.key.endsWith(`.pinion.root.${mode}`) && c.factor !== null);
  if (found === undefined) throw new Error('The lifter has no assessed tooth root.');
  return found;
}

describe('the trace of a tooth root', () => {
  const check = rootCheck('peak');
  const subject = { kind: 'check', check } as const;
  const html = markup(shown(subject));

  it('sets the factor as capacity over demand', () => {
    expect(html).toMatch(/<mi>S<\/mi><mo>=<\/mo><mfrac>.*?MPa.*?MPa.*?<\/mfrac><mo>=<\/mo>/);
    expect(words(shown(subject))).toContain('Required:');
  });

  it('says to which torque it holds and why', () => {
    expect(words(shown(subject))).toMatch(
      /It holds to [\d.]+.N·m of output torque: there its demand, which grows with/,
    );
  });

  it('folds every step once, numbered from 1, and gives every id once', () => {
    const numbers = [...html.matchAll(/class="trace-count">(\d+)</g)].map((m) => Number(m[1]));
    expect(numbers).toEqual(numbers.map((_, i) => i + 1));
    expect(numbers.length).toBeGreaterThan(20);
    const ids = [...html.matchAll(/\sid="([^"]+)"/g)].map((m) => m[1]);
    expect(ids).toHaveLength(new Set(ids).size);
    expect(ids).toHaveLength(numbers.length);
  });

  it('leads from every mention of a step to a step that is there', () => {
    const ids = new Set([...html.matchAll(/\sid="([^"]+)"/g)].map((m) => m[1]));
    const led = [...html.matchAll(/href="#(tx-\d+)"/g)].map((m) => m[1]);
    expect(led.length).toBeGreaterThan(5);
    for (const to of led) expect(ids).toContain(to);
  });

  it('ends at entered fields with their values, and at the catalogue with range, basis and source', () => {
    expect(html).toContain('entered train.stages.');
    expect(html).toMatch(
      /catalogue<\/span>.*?range.*?data-mark="(holds|not-assessed)">(read|adapted|from memory)/,
    );
  });

  it('carries neither style nor script', () => {
    expect(html).not.toMatch(/\sstyle=|<script|\son[a-z]+=/i);
    expect(html).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe('other traces', () => {
  it('of a figure stand open at their one number', () => {
    const figure = a.figures.find((f) => f.key === 'train.motorSpeed');
    if (figure === undefined) throw new Error('The lifter has no motor speed.');
    expect(markup(shown({ kind: 'figure', figure }))).toMatch(/<details class="trace-step"[^>]* open=""/);
  });

  it('of a curve begin at its marks and what its lines are drawn from', () => {
    const curve = a.curves.find((c) => c.key === 'output.envelope');
    if (curve === undefined) throw new Error('The lifter has no torque over speed.');
    const text = words(shown({ kind: 'curve', curve }));
    expect(text).toContain('Peak torque at the output speed');
    expect(text).toContain('efficiency of the drive, common practice, no source');
  });

  it('of a check that is not assessed say what is missing', () => {
    const check = sample('bearing', { demand: null, capacity: null });
    expect(words(shown({ kind: 'check', check }))).toContain('Not assessed: no load rating is entered.');
  });

  it('of an element without load say so instead of dividing by nothing', () => {
    const check = { ...sample('pin'), demand: 0, factor: 1e6, status: 'holds' as const };
    expect(words(shown({ kind: 'check', check }))).toContain(
      'There is no demand on it: the factor is > 1000.',
    );
  });

  it('of assessments that kept no origin say so', () => {
    const old = { ...sample('old'), steps: [] };
    expect(words(shown({ kind: 'check', check: old }))).toContain('did not keep where it comes from');
  });

  it('of ratios of temperatures are worked in kelvin', () => {
    const check = { ...sample('warm'), unit: 'degC' as const, demand: 340, capacity: 390, factor: 390 / 340 };
    expect(markup(shown({ kind: 'check', check }))).toMatch(/<mn>390\.0<\/mn>.*?<mtext>K<\/mtext>/);
  });
});
