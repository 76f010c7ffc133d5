// The title block of a revision, with the way to its neighbours.
import { addresses } from '@/app/_parts/addresses';
import { Unchanging } from '@/app/_parts/unchanging/unchanging';
import type { SheetView } from '@/lib/service/views/sheet';
import { printDay, printTime } from '@/lib/ui/marks/time';
import { TitleBlock } from '@/lib/ui/sheet/title-block';

/** What the title block is made of. */
type TitledSheet = Pick<
  SheetView,
  'design' | 'standing' | 'shown' | 'supersededBy' | 'previous' | 'next' | 'may'
> & { readonly revision: Omit<SheetView['revision'], 'document'> };

interface TitleProps {
  readonly sheet: TitledSheet;
}

export function RevisionTitle({ sheet }: { readonly sheet: SheetView }) {
  const titled = titleOf(sheet);
  return (
    <Unchanging from={['title', titled]}>
      <Title sheet={titled} />
    </Unchanging>
  );
}

/** All that the title block follows from. */
export function titleOf(sheet: SheetView): TitledSheet {
  const { design, revision, standing, shown, supersededBy, previous, next, may } = sheet;
  const { document: _, ...issued } = revision;
  return { design, standing, shown, supersededBy, previous, next, may, revision: issued };
}

export function Title({ sheet }: TitleProps) {
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
            superseded by <a href={addresses.revision(design.number, supersededBy)}>{supersededBy}</a>
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

function ChangeNote({ sheet }: TitleProps) {
  const { design, revision, previous, next } = sheet;
  return (
    <>
      {revision.changeNote}{' '}
      <span className="title-links">
        {previous === null ? null : (
          <>
            <a href={addresses.revision(design.number, previous)}>Revision {previous}</a>{' '}
            <a href={addresses.compare(design.number, previous, revision.letter)}>
              Compare {previous} with {revision.letter}
            </a>{' '}
          </>
        )}
        {next === null ? null : <a href={addresses.revision(design.number, next)}>Revision {next}</a>}{' '}
        <a href={addresses.worked(design.number, revision.letter)}>Worked sheet</a>{' '}
        {sheet.may.edit ? <a href={addresses.draft(design.number)}>Working draft</a> : null}
      </span>
    </>
  );
}
