// One number of a revision, or of the draft, followed back to what was entered: a piece of a page, fetched when a reader
// unfolds the number. It is rendered once for its facts; a browser that has it asks only whether it may still show it.
import { redirect } from 'next/navigation';
import { addresses } from '@/app/_parts/addresses';
import { pieceAnswer, pieceId, pieceRefused } from '@/app/_parts/following/pieces-made';
import { fieldWords, partWords } from '@/lib/preview/words';
import { handbookFormulas } from '@/lib/service/handbook/handbook';
import { followNumber } from '@/lib/service/sheets/follow-number';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import type { TraceView } from '@/lib/service/views/trace';
import { TraceView as Trace } from '@/lib/ui/trace/trace-view';

type Kind = TraceView['subject']['kind'];

export async function GET(
  request: Request,
  { params }: { params: Promise<{ number: string; side: string }> },
): Promise<Response> {
  const { number, side } = await params;
  // Opened as a page of its own it would be bare: the worked sheet says the same.
  if (request.headers.get('sec-fetch-dest') === 'document')
    redirect(side === 'draft' ? addresses.draft(number) : addresses.worked(number, side));
  const asked = new URL(request.url).searchParams;
  const [kind = '', ...key] = (asked.get('of') ?? '').split('-');
  const method = asked.get('method');
  const result = await followNumber(await currentViewer(), {
    design: number,
    side,
    // The use case refuses what is none of its kinds.
    kind: kind as Kind,
    key: key.join('-'),
    ...(method === null ? {} : { method }),
  });
  if (!result.ok) return pieceRefused(result.error);
  const view = result.value;
  const id = pieceId([view.design, view.side, view.hashes, `${kind}-${key.join('-')}`, method]);
  return pieceAnswer(request, id, () => <Followed view={view} id={id} method={method} />);
}

interface FollowedProps {
  readonly view: TraceView;
  readonly id: string;
  readonly method: string | null;
}

function Followed({ view, id, method }: FollowedProps) {
  const { design, side, document, subject, trace, entered, rows } = view;
  const sheet = side === 'draft' ? addresses.draft(design) : addresses.revision(design, side, method);
  return (
    <Trace
      subject={subject}
      setting={{
        trace,
        id: `t${id.slice(0, 10)}`,
        formulas: handbookFormulas(),
        partLabel: (path) => partWords(document, path),
        field: (path) => ({ text: fieldWords(document, path), href: `${sheet}#field-${path}` }),
        entered: (path) => entered.get(path),
        row: (key) => rows.get(key),
        rowHref: (key) => `${addresses.materials}#row-${key}`,
        formulaHref: (key) => `${addresses.handbook}#formula-${key}`,
      }}
    />
  );
}
