// What a thread may point at on a revision, and that place in words.
import type { Assessment } from '@/lib/assess/assessment';
import type { Design } from '@/lib/design/document';
import { fieldAt, valueAt } from '@/lib/design/path';
import { fieldsOf } from '@/lib/design/walk';
import type { AnchorKind } from '@/lib/review/threads';

/** The place in words, or null when the revision holds no such place. */
export function anchorLabel(
  anchor: { readonly kind: AnchorKind; readonly path: string },
  document: Design,
  assessment: Assessment,
): string | null {
  const { kind, path } = anchor;
  switch (kind) {
    case 'revision':
      return path === '' ? 'The revision as a whole' : null;
    case 'field':
      return fieldLabel(path, document);
    case 'figure':
      return assessment.figures.find((f) => f.key === path)?.label ?? null;
    case 'check':
      return assessment.checks.find((c) => c.key === path)?.label ?? null;
    case 'finding': {
      const finding = assessment.findings.find((f) => f.key === path);
      return finding === undefined ? null : clipped(finding.text);
    }
  }
}

/** A single field with the trail to it, or a whole part or stage. */
function fieldLabel(path: string, document: Design): string | null {
  const leaf = fieldsOf(document).find((f) => f.path === path);
  if (leaf !== undefined) return [...leaf.trail, leaf.field.label].join(', ');
  if (path === '' || valueAt(document, path) === undefined) return null;
  const inside = fieldsOf(document).find((f) => f.path.startsWith(`${path}.`));
  if (inside === undefined) return null;
  const depth = path.split('.').length;
  const words = inside.trail.slice(0, depth);
  return words.length > 0 ? words.join(', ') : (fieldAt(path)?.label ?? null);
}

function clipped(text: string): string {
  return text.length <= 120 ? text : `${text.slice(0, 119)}…`;
}
