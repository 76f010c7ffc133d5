// Deciding about a finding, or about a check that falls short: what it says, who may, the decision and its reason.
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { addresses } from '@/app/_parts/addresses';
import { PageFrame } from '@/app/_parts/page-frame';
import { shown } from '@/app/_parts/shown';
import { TextForm } from '@/app/_parts/text-form';
import { revisionSheet } from '@/lib/service/sheets/revision-sheet';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import type { SheetView } from '@/lib/service/views/sheet';
import { FindingList } from '@/lib/ui/findings/finding-list';
import { LinkButton } from '@/lib/ui/forms/button';
import { EmptyState } from '@/lib/ui/notices/empty-state';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { View } from '@/lib/ui/sheet/view';
import { RevisionTitle } from '../_parts/revision-title';
import { dispose } from '../actions';

interface Props {
  readonly params: Promise<{ number: string; letter: string }>;
  readonly searchParams: Promise<{ about?: string }>;
}

export const metadata: Metadata = { title: 'Decide' };

const decisions = {
  accepted: 'Accepted as it is',
  notApplicable: 'Does not apply here',
  reworked: 'Reworked outside the document',
};

export default async function DecidePage({ params, searchParams }: Props) {
  const [{ number, letter }, { about = '' }] = [await params, await searchParams];
  const result = await revisionSheet(await currentViewer(), { design: number, letter });
  return shown(result, (sheet) => (
    <PageFrame club={sheet.design.club.code}>
      <Sheet title={<RevisionTitle sheet={sheet} />}>
        <View letter="A" title="Decide about this">
          <Matter sheet={sheet} about={about} />
          <LinkButton href={addresses.revision(number, letter)} kind="quiet">
            Back to the sheet
          </LinkButton>
        </View>
      </Sheet>
    </PageFrame>
  ));
}

function Matter({ sheet, about }: { readonly sheet: SheetView; readonly about: string }) {
  const finding = sheet.findings.find((f) => f.finding.key === about);
  if (finding !== undefined) {
    return (
      <>
        <FindingList findings={[finding.finding]} />
        {finding.disposition === null && finding.mayDispose ? (
          <Decision sheet={sheet} findingKey={about} fingerprint={finding.fingerprint} />
        ) : (
          <EmptyState>{finding.whyNot ?? 'This finding was decided about already.'}</EmptyState>
        )}
      </>
    );
  }
  const blocker = sheet.holdPoints.flatMap((p) => p.blockers).find((b) => b.dispose?.findingKey === about);
  if (blocker?.dispose == null) notFound();
  return (
    <>
      <p>{blocker.sentence}</p>
      {blocker.mayDispose ? (
        <Decision sheet={sheet} {...blocker.dispose} />
      ) : (
        <EmptyState>{blocker.remover}</EmptyState>
      )}
    </>
  );
}

interface DecisionProps {
  readonly sheet: SheetView;
  readonly findingKey: string;
  readonly fingerprint: string;
}

function Decision({ sheet, findingKey, fingerprint }: DecisionProps) {
  return (
    <TextForm
      action={dispose}
      hidden={{ design: sheet.design.number, letter: sheet.revision.letter, findingKey, fingerprint }}
      failed="Not decided."
      submit="Decide"
      kind="main"
      inputs={[
        { kind: 'choice', name: 'kind', label: 'Decision', options: decisions },
        {
          kind: 'block',
          name: 'reason',
          label: 'Reason',
          rows: 3,
          max: 2000,
          help: 'At least a sentence; it is kept for good.',
        },
      ]}
    />
  );
}
