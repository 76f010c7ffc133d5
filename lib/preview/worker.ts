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
}

self.addEventListener('message', (event: MessageEvent<PreviewRequest>) => {
  const { turn, document } = event.data;
  const answer: PreviewAnswer = { turn, assessment: assess(document) };
  self.postMessage(answer);
});
