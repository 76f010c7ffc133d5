// The calculation library in the browser, off the page's thread: the draft's preview. The server decides at publishing.
import { assess } from '@/lib/assess/assess';
import type { Assessment } from '@/lib/assess/assessment';
import type { Design } from '@/lib/design/document';

export interface PreviewRequest {
  readonly turn: number;
  readonly document: Design;
}

export interface PreviewAnswer {
  readonly turn: number;
  readonly assessment: Assessment;
  /** False for the first answer, from before loop and faults were simulated. */
  readonly whole: boolean;
}

let newest = 0;

self.addEventListener('message', (event: MessageEvent<PreviewRequest>) => {
  const { turn, document } = event.data;
  newest = turn;
  const answer = (whole: boolean) => {
    const said: PreviewAnswer = { turn, assessment: assess(document, { simulate: whole }), whole };
    self.postMessage(said);
  };
  answer(false);
  // A newer document that has come in by then is answered first, and this one no more.
  setTimeout(() => {
    if (newest === turn) answer(true);
  });
});
