// Where the map of a revision is started (POST do=start), stopped (POST do=stop), and watched (GET). With script the answer is
// a stream, a line of JSON at each change; a plain form waits for the end and is sent back to the page.
import { addresses } from '@/app/_parts/addresses';
import { tell } from '@/lib/service/failures';
import { startGainMap, stopGainMap, watchGainMap } from '@/lib/service/gain-map/gain-map';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import type { GainMapWatch } from '@/lib/service/views/gain-map';

interface Context {
  readonly params: Promise<{ number: string; letter: string }>;
}

/** A plain form waits no longer: its page then says how far the work is. */
const patienceMs = 30_000;

export async function GET(request: Request, { params }: Context): Promise<Response> {
  const { number, letter } = await params;
  return streamed(request, await watchGainMap(await currentViewer(), { design: number, letter }));
}

export async function POST(request: Request, { params }: Context): Promise<Response> {
  const origin = request.headers.get('origin');
  if (origin !== null && new URL(origin).host !== request.headers.get('host'))
    return new Response('Not from here.', { status: 403 });
  const [{ number, letter }, viewer, form] = await Promise.all([params, currentViewer(), request.formData()]);
  const asked = { design: number, letter };
  const plain = request.headers.get('accept')?.includes('text/html') ?? false;
  const page = addresses.gainMap(number, letter);
  if (form.get('do') === 'stop') {
    const stopped = await stopGainMap(viewer, asked);
    if (!stopped.ok) return refusal(stopped.error);
    return plain ? backTo(page, null) : new Response(null, { status: 204 });
  }
  const started = await startGainMap(viewer, asked);
  if (!plain) return streamed(request, started);
  if (!started.ok)
    return started.error.code === 'service.busy' ? backTo(page, 'busy') : refusal(started.error);
  const end = started.value === null ? null : await endOf(started.value);
  return backTo(page, end === 'failed' ? 'failed' : null);
}

/** To the page, by a way relative to it: behind a proxy the server knows no name of its own. */
function backTo(page: string, was: 'failed' | 'busy' | null): Response {
  return new Response(null, {
    status: 303,
    headers: { location: was === null ? page : `${page}?was=${was}` },
  });
}

function refusal(error: Parameters<typeof tell>[0]): Response {
  const { status, sentence } = tell(error);
  return new Response(sentence, { status, headers: { 'cache-control': 'no-store' } });
}

/** How the work ended, or null when it takes longer than a form waits. */
function endOf({ listen }: GainMapWatch): Promise<'kept' | 'stopped' | 'failed' | null> {
  return new Promise((resolve) => {
    const late = setTimeout(() => resolve(null), patienceMs);
    const stop = listen(({ end }) => {
      if (end === null) return;
      clearTimeout(late);
      resolve(end);
      queueMicrotask(() => stop());
    });
  });
}

/** A line at each change until the end. A map that is not under way is one line: look again. */
function streamed(request: Request, watched: Awaited<ReturnType<typeof watchGainMap>>): Response {
  if (!watched.ok) return refusal(watched.error);
  const headers = {
    'content-type': 'application/x-ndjson',
    'cache-control': 'no-cache, no-transform',
    'x-accel-buffering': 'no',
  };
  const watch = watched.value;
  if (watch === null)
    return new Response(`${JSON.stringify({ done: 0, total: 0, end: 'kept' })}\n`, { headers });
  const text = new TextEncoder();
  let stop: () => void = () => {};
  const body = new ReadableStream<Uint8Array>({
    start(controller) {
      let open = true;
      const close = () => {
        if (!open) return;
        open = false;
        closers.delete(close);
        controller.close();
        queueMicrotask(() => stop());
      };
      closers.add(close);
      request.signal.addEventListener('abort', close);
      stop = watch.listen((at) => {
        if (!open) return;
        controller.enqueue(text.encode(`${JSON.stringify(at)}\n`));
        if (at.end !== null) close();
      });
    },
    cancel: () => stop(),
  });
  return new Response(body, { headers });
}

/** Streams that are open: the server waits for them before it ends, so that they must end first. */
const closers = new Set<() => void>();

process.once('SIGTERM', () => {
  for (const close of [...closers]) close();
});
