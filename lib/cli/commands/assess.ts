// assess FILE: the assessment of a design, with its worked sheet, as JSON.
import { assess } from '@/lib/assess/assess';
import { done, json, type Outcome, refused } from '../outcome';
import { readDocument } from '../read-document';

export function assessCommand(args: readonly string[]): Outcome {
  const [name, ...more] = args;
  if (name === undefined || more.length > 0)
    return refused('assess takes one file, or - for standard input.');
  const read = readDocument(name);
  return read.ok ? done(json(assess(read.document, { sheet: true }))) : refused(...read.lines);
}
