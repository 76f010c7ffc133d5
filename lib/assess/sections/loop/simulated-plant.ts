// The actuator of a document as it is simulated, worked without an assessment.
import type { Design } from '@/lib/design/document';
import { readSI } from '@/lib/design/read';
import { MaterialBook } from '../../book';
import { Sheet } from '../../sheet';
import type { Work } from '../../work';
import { dutySection } from '../duty';
import { powerSections } from '../power';
import { shaftsSection } from '../shafts/shafts';
import { stiffnessSection } from '../stiffness/stiffness';
import { trainSection } from '../train';
import { oppositeWays, runsAway } from './lacking';
import { type LoopPlant, plantOf } from './plant';

/** The plant of a document, by the sections that it rests on; or the sentence that says what to enter first. */
export function plantOfDocument(document: Design): LoopPlant | string {
  if (oppositeWays({ document })) return runsAway;
  const design = readSI(document);
  const work: Work = {
    document,
    design,
    sheet: new Sheet(false),
    book: new MaterialBook(design.coupons),
    figures: [],
    checks: [],
    curves: [],
  };
  const duty = dutySection(work);
  const train = trainSection(work, duty);
  shaftsSection(work, duty, train);
  const stiffness = stiffnessSection(work, train);
  return plantOf(work, train, powerSections(work, train), stiffness);
}
