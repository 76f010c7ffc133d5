// compare A B: what changed from one design to another, in fields and in consequences, as JSON.
import { assess } from '@/lib/assess/assess';
import { compare } from '@/lib/compare/compare';
import type { Design } from '@/lib/design/document';
import { done, json, type Outcome, refused } from '../outcome';
import { readDocument } from '../read-document';

export function compareCommand(args: readonly string[]): Outcome {
  const [before, after, ...more] = args;
  if (before === undefined || after === undefined || more.length > 0) {
    return refused('compare takes two files: the earlier and the later design.');
  }
  if (before === '-' && after === '-') return refused('Only one of the two can come from standard input.');
  const [a, b] = [readDocument(before), readDocument(after)];
  if (a.ok && b.ok) return done(json(compare(assessed(a.document), assessed(b.document))));
  return refused(...[a, b].flatMap((read) => (read.ok ? [] : read.lines)));
}

function assessed(document: Design) {
  return { document, assessment: assess(document, { sheet: false }) };
}
