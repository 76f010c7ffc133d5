// The content of one fold of a comparison: a piece of a page, fetched when a reader opens the fold.
import { redirect } from 'next/navigation';
import { addresses } from '@/app/_parts/addresses';
import { pieceAnswer, pieceId, pieceRefused } from '@/app/_parts/following/pieces-made';
import { compareRevisions } from '@/lib/service/sheets/compare-revisions';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import { compareFold } from '../_parts/changed-curves';

export async function GET(
  request: Request,
  { params }: { params: Promise<{ number: string; before: string; after: string }> },
): Promise<Response> {
  const { number, before, after } = await params;
  const of = new URL(request.url).searchParams.get('of') ?? '';
  // Opened as a page of its own it would be bare: the comparison in full holds the same.
  if (request.headers.get('sec-fetch-dest') === 'document')
    redirect(`${addresses.compare(number, before, after)}?in=full#${encodeURIComponent(of)}`);
  const result = await compareRevisions(await currentViewer(), { design: number, before, after });
  if (!result.ok) return pieceRefused(result.error);
  const content = compareFold(of, result.value);
  if (content === null) return pieceRefused({ code: 'number.notFound' });
  const sides = [result.value.before, result.value.after].map((s) => [s.letter, s.documentHash, s.method]);
  return pieceAnswer(request, pieceId(['compare', number, sides, of]), () => content, { 'x-fold': of });
}
