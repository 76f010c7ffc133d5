// The design that the bench works on: the demo design whose latest document is the longest.
import { documentsOf } from '@/lib/demo/designs/demo-design';
import { demoDesigns } from '@/lib/demo/designs/registry';
import { canonical } from '@/lib/design/canonical';
import type { Design } from '@/lib/design/document';

export interface Subject {
  readonly title: string;
  /** As last published. */
  readonly document: Design;
}

export function largestDesign(): Subject {
  const all = demoDesigns.flatMap(({ design }) => {
    const document = documentsOf(design).published.at(-1);
    return document === undefined ? [] : [{ title: design.title, document }];
  });
  const size = ({ document }: Subject) => canonical(document).length;
  return all.reduce((largest, one) => (size(one) > size(largest) ? one : largest));
}
