// The calculations to be timed: the assessment of the starter with every part, and a step of a draft's preview.
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { assess } from '@/lib/assess/assess';
import { prepareGainMap } from '@/lib/assess/gain-map';
import { stepTrial } from '@/lib/calc/loop/trial';
import type { Design } from '@/lib/design/document';
import { applyEdit, type DraftContent } from '@/lib/design/edit';
import { starters } from '@/lib/design/starters/registry';
import { FindingList } from '@/lib/ui/findings/finding-list';
import { Ladder } from '@/lib/ui/ladder/ladder';

const { title, document: starter } = starters.lifter;
const loop = prepareGainMap(starter);

/** Times nothing itself: each function is one run. The draft is a document of its own. */
export function calculationsOf(document: Design) {
  let content: DraftContent = { document, pending: {} };
  return {
    starter: title,
    assessed: () => assess(starter, { simulate: false }),
    assessedWithSheet: () => assess(starter, { sheet: true, simulate: false }),
    assessedWhole: () => assess(starter),
    /** Two seconds of the starter's loop, every 50 µs. */
    loopSimulated: () => {
      if (typeof loop === 'string') throw new Error(loop);
      return stepTrial(loop.loaded.plant, loop.controller, loop.way, { innerStep: 5e-5, duration: 2 });
    },
    /** What follows a keystroke: the edit, the way to the worker and back, the assessment, and the preview's markup: what is drawn first. */
    preview: (turn: number) => {
      const text = String(document.duty.peakTorque * (1 + (turn % 2) / 100));
      content = applyEdit(content, { do: 'set', path: 'duty.peakTorque', text }).content;
      const { headline, checks, findings } = structuredClone(
        assess(structuredClone(content.document), { simulate: false }),
      );
      const parts = [createElement(Ladder, { checks, headline }), createElement(FindingList, { findings })];
      return parts.map((part) => renderToStaticMarkup(part)).join('');
    },
  };
}
