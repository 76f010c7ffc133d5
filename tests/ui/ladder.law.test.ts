// Laws of the ladder's drawing, for any checks: no label is clipped, none touches a vertical line, nothing is left out.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Check, Headline } from '@/lib/assess/assessment';
import { chooseRows } from '@/lib/ui/ladder/choose';
import { ladderLayout, unknownBox } from '@/lib/ui/ladder/layout';
import { check } from './samples';

const torque = fc.double({ min: 0.05, max: 5000, noNaN: true });
const rows = fc.array(
  fc.record({
    holds: fc.option(torque),
    low: fc.double({ min: 0.6, max: 1, noNaN: true }),
    scatter: fc.boolean(),
    name: fc.integer({ min: 1, max: 12 }),
  }),
  { minLength: 1, maxLength: 40 },
);
const scene = fc
  .record({ rows, demanded: torque, forced: fc.option(torque) })
  .map(({ rows: list, demanded, forced }) => {
    const checks = list.map((r, i): Check => {
      const label = `Stage ${i + 1} ${'planet carrier pin '.repeat(Math.ceil(r.name / 4))}, tooth root`;
      if (r.holds === null) return check(`c${i}`, { label, demand: null, capacity: null });
      const scatter = r.scatter ? { holdsFrom: r.holds * r.low, holdsUpTo: r.holds * (2 - r.low) } : {};
      return check(`c${i}`, { label, holdsTo: r.holds, ...scatter });
    });
    const weakest = checks
      .filter((c) => c.holdsTo !== null)
      .toSorted((a, b) => (a.holdsTo ?? 0) - (b.holdsTo ?? 0))[0];
    const headline: Headline = {
      ...{ weakest: weakest?.key ?? null, holdsTo: weakest?.holdsTo ?? null, demanded, forced },
      ...{ factor: weakest?.factor ?? null, required: weakest?.required ?? null },
      notAssessed: checks.filter((c) => c.holdsTo === null).length,
    };
    return { checks, headline, choice: chooseRows(checks) };
  });
const runs = { seed: 20261125, numRuns: 400 };

describe.each(['wide', 'narrow'] as const)('the %s ladder', (form) => {
  it('lets no number touch the lines of what is asked and what is forced', () => {
    fc.assert(
      fc.property(scene, ({ choice, headline }) => {
        const layout = ladderLayout(form, choice, headline);
        for (const { arrow } of layout.rows) {
          if (arrow === null) continue;
          for (const { x } of layout.tops)
            expect(x < arrow.textX - 3 || x > arrow.textX + arrow.textWidth + 3).toBe(true);
        }
      }),
      runs,
    );
  });

  it('clips no number, no label and no arrow', () => {
    fc.assert(
      fc.property(scene, ({ choice, headline }) => {
        const layout = ladderLayout(form, choice, headline);
        for (const { arrow, boxX } of layout.rows) {
          expect(boxX).toBeGreaterThanOrEqual(0);
          expect(boxX + unknownBox.width).toBeLessThanOrEqual(layout.width);
          if (arrow === null) continue;
          expect(arrow.tip).toBeGreaterThanOrEqual(layout.left);
          expect(arrow.textX + arrow.textWidth).toBeLessThanOrEqual(layout.width);
        }
        for (const top of layout.tops) {
          expect(top.textX).toBeGreaterThanOrEqual(0);
          expect(top.textX + top.width).toBeLessThanOrEqual(layout.width + 0.01);
        }
      }),
      runs,
    );
  });

  it('sets the two words at the top apart from one another', () => {
    fc.assert(
      fc.property(scene, ({ choice, headline }) => {
        const [a, b] = ladderLayout(form, choice, headline).tops;
        if (a === undefined || b === undefined) return;
        const apart = a.textX + a.width < b.textX || b.textX + b.width < a.textX;
        expect(apart || Math.abs(a.textY - b.textY) >= 16).toBe(true);
        // The line of the upper one passes beside the words of the lower one.
        const [upper, lower] = a.textY <= b.textY ? [a, b] : [b, a];
        if (upper.textY === lower.textY) return;
        expect(upper.x < lower.textX - 3 || upper.x > lower.textX + lower.width + 3).toBe(true);
      }),
      runs,
    );
  });

  it('draws arrows that are to scale as long as their torque, from zero', () => {
    fc.assert(
      fc.property(scene, ({ choice, headline }) => {
        const layout = ladderLayout(form, choice, headline);
        const asked = layout.tops[0];
        if (asked === undefined) return;
        const perTorque = (asked.x - layout.left) / headline.demanded;
        for (const { arrow, check: c } of layout.rows) {
          if (arrow !== null && !arrow.broken)
            expect(arrow.tip - layout.left).toBeCloseTo((c.holdsTo ?? 0) * perTorque, 3);
        }
      }),
      runs,
    );
  });

  it('keeps rows in rising order and tells of every check once', () => {
    fc.assert(
      fc.property(scene, ({ checks, choice, headline }) => {
        const layout = ladderLayout(form, choice, headline);
        const ys = layout.rows.map((r) => r.y);
        expect(ys).toEqual(ys.toSorted((a, b) => a - b));
        const told = [
          ...layout.rows.map((r) => r.check.key),
          ...[...choice.higher, ...choice.moreUnknown].map((c) => c.key),
        ];
        expect(told.toSorted()).toEqual(checks.map((c) => c.key).toSorted());
        const holds = layout.rows.flatMap((r) => r.check.holdsTo ?? []);
        expect(holds).toEqual(holds.toSorted((a, b) => a - b));
      }),
      runs,
    );
  });
});
