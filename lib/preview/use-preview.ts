'use client';
// The assessment of what is typed, worked in a worker. Only the newest document matters: older answers are dropped.
import { useEffect, useRef, useState } from 'react';
import type { Assessment } from '@/lib/assess/assessment';
import type { Design } from '@/lib/design/document';
import type { PreviewAnswer, PreviewRequest } from './worker';

export interface Preview {
  readonly assessment: Assessment;
  /** True while a newer document is being assessed. */
  readonly stale: boolean;
  /** A sentence when the preview cannot run in this browser; the last assessment is then shown as it was. */
  readonly failed: string | null;
}

/** `first` is the server's assessment of the document the page opened with. */
export function usePreview(document: Design, first: Assessment): Preview {
  const worker = useRef<Worker | null>(null);
  const asked = useRef({ turn: 0, document });
  const [answered, setAnswered] = useState(0);
  const [assessment, setAssessment] = useState(first);
  const [failed, setFailed] = useState<string | null>(null);

  useEffect(() => {
    const started = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
    started.addEventListener('message', (event: MessageEvent<PreviewAnswer>) => {
      if (event.data.turn !== asked.current.turn) return;
      setAssessment(event.data.assessment);
      if (event.data.whole) setAnswered(event.data.turn);
      setFailed(null);
    });
    started.addEventListener('error', () =>
      setFailed('The preview stopped. Saving goes on; the server assesses when you publish.'),
    );
    worker.current = started;
    return () => started.terminate();
  }, []);

  useEffect(() => {
    if (asked.current.document === document) return;
    asked.current = { turn: asked.current.turn + 1, document };
    const request: PreviewRequest = asked.current;
    worker.current?.postMessage(request);
  }, [document]);

  return { assessment, stale: answered < asked.current.turn, failed };
}
