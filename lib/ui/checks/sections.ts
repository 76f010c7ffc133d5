// Checks and figures by section, in the order of the power flow.
import { type SectionKey, sectionLabels } from '@/lib/assess/assessment';

// Object.keys forgets the literal keys.
const order = Object.keys(sectionLabels) as SectionKey[];

export interface Section<T> {
  readonly key: SectionKey;
  readonly label: string;
  readonly rows: readonly T[];
}

/** Groups rows by their section; sections without rows are left out. */
export function bySection<T extends { readonly section: SectionKey }>(rows: readonly T[]): Section<T>[] {
  return order
    .map((key) => ({ key, label: sectionLabels[key], rows: rows.filter((r) => r.section === key) }))
    .filter((s) => s.rows.length > 0);
}
