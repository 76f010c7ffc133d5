// Taking a signature back, with a reason that stays on record.
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { addresses } from '@/app/_parts/addresses';
import { PageFrame } from '@/app/_parts/page-frame';
import { shown } from '@/app/_parts/shown';
import { TextForm } from '@/app/_parts/text-form';
import { revisionSheet } from '@/lib/service/sheets/revision-sheet';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import type { SheetView } from '@/lib/service/views/sheet';
import { LinkButton } from '@/lib/ui/forms/button';
import { EmptyState } from '@/lib/ui/notices/empty-state';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { View } from '@/lib/ui/sheet/view';
import { RevisionTitle } from '../_parts/revision-title';
import { SignatureShown } from '../_parts/signature-shown';
import { withdraw } from '../actions';

interface Props {
  readonly params: Promise<{ number: string; letter: string }>;
  readonly searchParams: Promise<{ signature?: string }>;
}

export const metadata: Metadata = { title: 'Withdraw a signature' };

export default async function WithdrawPage({ params, searchParams }: Props) {
  const [{ number, letter }, { signature }] = [await params, await searchParams];
  const result = await revisionSheet(await currentViewer(), { design: number, letter });
  return shown(result, (sheet) => (
    <PageFrame club={sheet.design.club.code}>
      <Sheet title={<RevisionTitle sheet={sheet} />}>
        <View letter="A" title="Withdraw a signature">
          <Withdraw sheet={sheet} signOffId={signature} />
          <LinkButton href={addresses.revision(number, letter)} kind="quiet">
            Back to the sheet
          </LinkButton>
        </View>
      </Sheet>
    </PageFrame>
  ));
}

function Withdraw({
  sheet,
  signOffId,
}: {
  readonly sheet: SheetView;
  readonly signOffId: string | undefined;
}) {
  const point = sheet.holdPoints.find((p) => p.signatures.some((s) => s.signOffId === signOffId));
  const signature = point?.signatures.find((s) => s.signOffId === signOffId);
  if (point === undefined || signature === undefined) notFound();
  return (
    <>
      <SignatureShown signature={signature} point={point} />
      {signature.mayWithdraw ? (
        <TextForm
          action={withdraw}
          hidden={{
            signOffId: signature.signOffId,
            design: sheet.design.number,
            letter: sheet.revision.letter,
          }}
          failed="Not withdrawn."
          submit="Withdraw the signature"
          kind="warning"
          inputs={[
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
      ) : (
        <EmptyState>Only the signer or a safety officer withdraws a signature, and only once.</EmptyState>
      )}
    </>
  );
}
