'use client';
// Starts the map, tells how far it is, and stops it. Without script these are plain forms that wait.
import { useRouter } from 'next/navigation';
import { type FormEvent, useCallback, useEffect, useRef, useState } from 'react';
import { Button } from '@/lib/ui/forms/button';
import { Failure } from '@/lib/ui/notices/notice';
import { stepsOf } from './steps';

interface Running {
  readonly done: number;
  readonly total: number;
}

/** Asked for, and not answered yet. */
const notBegun: Running = { done: 0, total: 0 };

interface MapWorkProps {
  /** Address of the page, to look again without script. */
  readonly page: string;
  /** Address where the map is started, stopped and watched. */
  readonly work: string;
  /** How far it was when the page was opened; null when it is not under way. */
  readonly running: Running | null;
}

export function MapWork({ page, work, running: opened }: MapWorkProps) {
  const { running, said, start } = useWork(work, opened);
  const onStart = (event: FormEvent) => {
    event.preventDefault();
    start();
  };
  const onStop = (event: FormEvent) => {
    event.preventDefault();
    void send(work, 'stop');
  };
  return (
    <div className="map-work">
      <p role="status" className="hush">
        {running !== null ? 'The map is being simulated.' : said === 'stopped' ? 'The map was stopped.' : ''}
      </p>
      {said === 'failed' ? (
        <Failure title="Not simulated.">It failed on our side. Please try again.</Failure>
      ) : null}
      {said !== null && said !== 'failed' && said !== 'stopped' && said !== 'kept' ? (
        <Failure title="Not simulated.">{said}</Failure>
      ) : null}
      {running === null ? (
        <form method="post" action={work} onSubmit={onStart}>
          <input type="hidden" name="do" value="start" />
          <p>
            Some hundreds of runs of the loop, each gain with each load, take a few seconds. The map is then
            kept for everyone who may read this design.
          </p>
          <Button kind="main">Simulate the map</Button>
        </form>
      ) : (
        <form method="post" action={work} onSubmit={onStop}>
          <input type="hidden" name="do" value="stop" />
          <p>
            <progress value={running.done} max={Math.max(1, running.total)} aria-label="Cells simulated" />{' '}
            <span className="number">
              {running.total === 0 ? 'beginning …' : `${running.done} of ${running.total} cells`}
            </span>
          </p>
          <noscript>
            <p>
              <a href={page}>Look again</a>
            </p>
          </noscript>
          <Button disabled={running.total === 0}>Stop</Button>
        </form>
      )}
    </div>
  );
}

/** The work as this page sees it; `said`: how it ended, or why it could not begin. */
function useWork(work: string, opened: Running | null) {
  const router = useRouter();
  const [running, setRunning] = useState(opened);
  const [said, setSaid] = useState<string | null>(null);
  const follow = useCallback(
    async (answer: Promise<Response>) => {
      try {
        for await (const step of stepsOf(await answer)) {
          setRunning(step.end === null ? step : null);
          if (step.end !== null) setSaid(step.end);
          // The page now has the map.
          if (step.end === 'kept') router.refresh();
        }
      } catch (error) {
        setRunning(null);
        setSaid(error instanceof Error ? error.message : 'It could not be reached.');
      }
    },
    [router],
  );
  const joined = useRef(false);
  useEffect(() => {
    if (opened === null || joined.current) return;
    joined.current = true;
    void follow(fetch(work));
  }, [opened, work, follow]);
  const start = () => {
    setSaid(null);
    setRunning(notBegun);
    void follow(send(work, 'start'));
  };
  return { running, said, start };
}

function send(work: string, what: 'start' | 'stop'): Promise<Response> {
  const accept = 'application/x-ndjson';
  return fetch(work, { method: 'POST', headers: { accept }, body: new URLSearchParams({ do: what }) });
}
