// The sheet of a revision: what breaks first, hold points, checks and figures by section, what was entered, and beside
// it findings and remarks.
import type { Metadata } from 'next';
import { addresses } from '@/app/_parts/addresses';
import { FollowInPlace } from '@/app/_parts/following/follow-in-place';
import { PageFrame } from '@/app/_parts/page-frame';
import { shown } from '@/app/_parts/shown';
import { Unchanging } from '@/app/_parts/unchanging/unchanging';
import { revisionSheet } from '@/lib/service/sheets/revision-sheet';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import type { SheetView } from '@/lib/service/views/sheet';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { HoldPointsView } from './_parts/hold-points-view';
import { BelowFindings, Findings, hasForms } from './_parts/margin';
import { pinsOf } from './_parts/pins';
import { RevisionTitle, Title, titleOf } from './_parts/revision-title';
import { SectionViews, WeakestLink } from './_parts/worked-views';

interface Props {
  readonly params: Promise<{ number: string; letter: string }>;
  /** `in=full`: nothing is left off. */
  readonly searchParams: Promise<{ method?: string; in?: string }>;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { number, letter } = await params;
  return { title: `${number} ${letter}` };
}

export default async function RevisionPage({ params, searchParams }: Props) {
  const [{ number, letter }, { method, in: form }] = [await params, await searchParams];
  const inFull = form === 'full' ? undefined : addresses.inFull(number, letter, method);
  const asked = method === undefined ? { design: number, letter } : { design: number, letter, method };
  const result = await revisionSheet(await currentViewer(), asked);
  return shown(result, (sheet) => (
    <PageFrame club={sheet.design.club.code}>
      <RevisionSheet sheet={sheet} inFull={inFull} />
      <FollowInPlace
        sides={[{ label: null, href: addresses.trace(number, letter, method) }]}
        folds={addresses.fold(number, letter, method)}
      />
    </PageFrame>
  ));
}

interface RevisionSheetProps {
  readonly sheet: SheetView;
  /** Address of the sheet in full where this one leaves off what is folded. */
  readonly inFull: string | undefined;
}

/** A sheet without a form follows from its facts as a whole; with one, its views and findings do, each for itself. */
function RevisionSheet({ sheet, inFull }: RevisionSheetProps) {
  const { design, revision, changed, shown, holdPoints, findings, threads, presentMethod } = sheet;
  // Both hashes stand for all that they were taken of; what changed follows from an older assessment too.
  const source = [
    design.number,
    revision.letter,
    revision.documentHash,
    shown.hash,
    changed,
    holdPoints,
    inFull,
  ];
  if (!hasForms(sheet)) {
    return (
      <Unchanging from={['sheet', ...source, titleOf(sheet), findings, threads, presentMethod]}>
        <Sheet
          title={<Title sheet={titleOf(sheet)} />}
          marginLabel={marginLabel}
          margin={
            <>
              <Findings sheet={sheet} />
              <BelowFindings sheet={sheet} />
            </>
          }
        >
          <Views sheet={sheet} inFull={inFull} />
        </Sheet>
      </Unchanging>
    );
  }
  return (
    <Sheet
      title={<RevisionTitle sheet={sheet} />}
      marginLabel={marginLabel}
      margin={
        <>
          <Unchanging from={['findings', design.number, revision.letter, findings, pinsOf(sheet)]}>
            <Findings sheet={sheet} />
          </Unchanging>
          <BelowFindings sheet={sheet} />
        </>
      }
    >
      <Unchanging from={['views', ...source, pinsOf(sheet)]}>
        <Views sheet={sheet} inFull={inFull} />
      </Unchanging>
    </Sheet>
  );
}

const marginLabel = 'Findings and remarks';

function Views({ sheet, inFull }: RevisionSheetProps) {
  const { design, revision, assessment, changed } = sheet;
  const worked = { number: design.number, revision, assessment, changed };
  return (
    <>
      <WeakestLink {...worked} />
      <HoldPointsView sheet={sheet} />
      <SectionViews {...worked} pins={pinsOf(sheet)} inFull={inFull} />
    </>
  );
}
