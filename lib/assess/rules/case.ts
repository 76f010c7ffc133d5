// The rules on case.
import { fewScrews } from './case/few-screws';
import { frictionOnPlastic } from './case/friction-on-plastic';
import { headSinks } from './case/head-sinks';
import { noScrews } from './case/no-screws';
import { screwsNotDescribed } from './case/screws-not-described';
import { screwsOvertightened } from './case/screws-overtightened';
import { screwsSlip } from './case/screws-slip';
import { screwsStrip } from './case/screws-strip';
import type { Rule } from './rule';

export const caseRules: readonly Rule[] = [
  noScrews,
  screwsSlip,
  screwsStrip,
  screwsOvertightened,
  frictionOnPlastic,
  headSinks,
  fewScrews,
  screwsNotDescribed,
];
