// Looking things up in the assessment of a document.
import { assess } from '@/lib/assess/assess';
import type { Assessment, Check } from '@/lib/assess/assessment';
import type { Design } from '@/lib/design/document';

/** A document as assessed, with the checks and figures by their keys. */
export class Asked {
  readonly assessment: Assessment;
  constructor(document: Design) {
    this.assessment = assess(document, { sheet: true });
  }

  check(key: string): Check {
    const found = this.assessment.checks.find((c) => c.key === key);
    if (found === undefined) throw new Error(`no check ${key}`);
    return found;
  }

  /** The value of a figure in SI; not a number when it has none. */
  figure(key: string): number {
    return this.assessment.figures.find((f) => f.key === key)?.value ?? Number.NaN;
  }

  /** The value of a worked step. */
  step(key: string): number {
    return this.assessment.sheet.find((s) => s.key === key)?.value ?? Number.NaN;
  }

  rules(): string[] {
    return this.assessment.findings.map((f) => f.rule);
  }
}
