// The content of one fold of a revision's sheet: a piece of a page, fetched when a reader opens the fold, or follows a link
// to a row in it. What it holds follows from the facts of the sheet, and is rendered once for them.
import { redirect } from 'next/navigation';
import { addresses } from '@/app/_parts/addresses';
import { pieceAnswer, pieceId, pieceRefused } from '@/app/_parts/following/pieces-made';
import { revisionSheet } from '@/lib/service/sheets/revision-sheet';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import { foldContent, foldOf } from '../_parts/fold-content';
import { pinsOf } from '../_parts/pins';

export async function GET(
  request: Request,
  { params }: { params: Promise<{ number: string; letter: string }> },
): Promise<Response> {
  const { number, letter } = await params;
  const asked = new URL(request.url).searchParams;
  const [of, method] = [asked.get('of') ?? '', asked.get('method')];
  // Opened as a page of its own it would be bare: the sheet in full holds the same.
  if (request.headers.get('sec-fetch-dest') === 'document')
    redirect(`${addresses.inFull(number, letter, method)}#${encodeURIComponent(of)}`);
  const result = await revisionSheet(await currentViewer(), {
    design: number,
    letter,
    ...(method === null ? {} : { method }),
  });
  if (!result.ok) return pieceRefused(result.error);
  const { revision, assessment, changed, shown } = result.value;
  const fold = foldOf(of, result.value);
  const pins = pinsOf(result.value);
  const content = foldContent(fold, pins, { number, revision, assessment, changed });
  if (content === null) return pieceRefused({ code: 'number.notFound' });
  const id = pieceId([number, letter, revision.documentHash, shown.hash, changed, pins, fold]);
  return pieceAnswer(request, id, () => content, { 'x-fold': fold });
}
