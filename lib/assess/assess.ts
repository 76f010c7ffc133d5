// Document → assessment. A pure function: the same document by the same method gives the same bytes.
import type { Design } from '@/lib/design/document';
import { readSI } from '@/lib/design/read';
import { type Assessment, type Finding, type SectionKey, sectionLabels } from './assessment';
import { MaterialBook } from './book';
import { headlineOf, weakestOf } from './headline';
import { methodVersion } from './method';
import { rules } from './rules/registry';
import type { Judged } from './rules/rule';
import { bearingsSection } from './sections/bearings/bearings';
import { caseSection } from './sections/case/case';
import { dutySection } from './sections/duty';
import { faultsSection } from './sections/faults/faults';
import { hubsSection } from './sections/hubs/hubs';
import { loopSection } from './sections/loop/loop';
import { powerSections } from './sections/power';
import { shaftsSection } from './sections/shafts/shafts';
import { stiffnessSection } from './sections/stiffness/stiffness';
import { strikeSection } from './sections/strike/strike';
import { trainSection } from './sections/train';
import { Sheet } from './sheet';
import type { Work } from './work';

/**
 * Assesses a valid design document (as `lib/design` parses it). The numbers are the same with and without the sheet,
 * which is left empty unless asked for. Without `simulate` the figures that only a simulation gives say that they were left
 * out; all others are the same. Nothing is thrown for any valid document: what cannot be told is *not assessed*
 * and says why.
 */
export function assess(
  document: Design,
  options: { readonly sheet?: boolean; readonly simulate?: boolean } = {},
): Assessment {
  const sheet = new Sheet(options.sheet ?? false);
  const design = readSI(document);
  const book = new MaterialBook(design.coupons);
  const work: Work = { document, design, sheet, book, figures: [], checks: [], curves: [] };
  const duty = dutySection(work);
  const train = trainSection(work, duty);
  const reactions = shaftsSection(work, duty, train);
  hubsSection(work, train);
  bearingsSection(work, duty, train, reactions);
  const stiffness = stiffnessSection(work, train);
  const drive = powerSections(work, train);
  caseSection(work, train, reactions);
  // The strike is judged against all that stands before it.
  strikeSection(work, train, drive, stiffness);
  const simulate = options.simulate ?? true;
  const loop = loopSection(work, train, drive, stiffness, simulate);
  faultsSection(work, loop, simulate);
  const weakest = weakestOf(work.checks);
  const judged: Judged = {
    document,
    design,
    figures: byKey(work.figures),
    checks: byKey(work.checks),
    curves: work.curves,
    train,
    drive,
    weakest,
  };
  return {
    method: methodVersion,
    headline: headlineOf(work.checks, weakest, document.duty.peakTorque, drive),
    figures: inOrder(work.figures),
    checks: inOrder(work.checks),
    findings: findingsOf(judged),
    curves: inOrder(work.curves),
    sheet: inOrder(sheet.steps),
  };
}

// Object.keys forgets the literal keys.
const order = Object.keys(sectionLabels) as SectionKey[];

function byKey<T extends { readonly key: string }>(items: readonly T[]): ReadonlyMap<string, T> {
  const found = new Map<string, T>();
  for (const item of items) found.set(item.key, item);
  return found;
}

/** By section in the order of the power flow; within a section as it was worked. */
function inOrder<T extends { readonly section: SectionKey }>(items: readonly T[]): T[] {
  const sorted: T[] = [];
  for (const section of order) for (const item of items) if (item.section === section) sorted.push(item);
  return sorted;
}

const classRank = { critical: 0, major: 1, minor: 2 } as const;

/** Worst first; within a class in the order of the rules. */
function findingsOf(judged: Judged): Finding[] {
  const findings: Finding[] = [];
  for (const rule of rules) {
    for (const raw of rule.judge(judged)) {
      findings.push({
        key: `${rule.key}:${raw.at}`,
        rule: rule.key,
        class: raw.class ?? rule.class,
        at: raw.at,
        text: raw.text,
        advice: raw.advice,
        reason: rule.reason,
        source: rule.source,
      });
    }
  }
  return findings.sort((a, b) => classRank[a.class] - classRank[b.class]);
}
