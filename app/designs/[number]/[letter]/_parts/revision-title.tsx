// The title block of a revision, with the way to its neighbours.
import Link from 'next/link';
import { addresses } from '@/app/_parts/addresses';
import type { SheetView } from '@/lib/service/views/sheet';
import { printDay, printTime } from '@/lib/ui/marks/time';
import { TitleBlock } from '@/lib/ui/sheet/title-block';

export function RevisionTitle({ sheet }: { readonly sheet: SheetView }) {
  const { design, revision, standing, shown, supersededBy } = sheet;
  return (
    <TitleBlock
      club={design.club.name}
      title={design.title}
      drawing={design.number}
      revision={revision.letter}
      standing={standing.label}
      standingNote={
        supersededBy === null ? undefined : (
          <>
            superseded by <Link href={addresses.revision(design.number, supersededBy)}>{supersededBy}</Link>
          </>
        )
      }
      issued={{ day: printDay(revision.publishedAt), hour: printTime(revision.publishedAt).slice(11) }}
      drawnBy={revision.author.name}
      hash={revision.documentHash}
      method={shown.method}
      extra={{ label: 'Change note', content: <ChangeNote sheet={sheet} /> }}
    />
  );
}

function ChangeNote({ sheet }: { readonly sheet: SheetView }) {
  const { design, revision, previous, next } = sheet;
  return (
    <>
      {revision.changeNote}{' '}
      <span className="title-links">
        {previous === null ? null : (
          <>
            <Link href={addresses.revision(design.number, previous)}>Revision {previous}</Link>{' '}
            <Link href={addresses.compare(design.number, previous, revision.letter)}>
              Compare {previous} with {revision.letter}
            </Link>{' '}
          </>
        )}
        {next === null ? null : <Link href={addresses.revision(design.number, next)}>Revision {next}</Link>}{' '}
        <Link href={addresses.worked(design.number, revision.letter)}>Worked sheet</Link>{' '}
        {sheet.may.edit ? <Link href={addresses.draft(design.number)}>Working draft</Link> : null}
      </span>
    </>
  );
}
