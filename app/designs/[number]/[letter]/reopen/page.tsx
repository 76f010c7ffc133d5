// Reopening a thread that was resolved: what was said, and why it is not settled after all.
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
import { Thread } from '@/lib/ui/threads/thread';
import { RevisionTitle } from '../_parts/revision-title';
import { threadShown } from '../_parts/thread-shown';
import { settle } from '../actions';

interface Props {
  readonly params: Promise<{ number: string; letter: string }>;
  readonly searchParams: Promise<{ thread?: string }>;
}

export const metadata: Metadata = { title: 'Reopen a thread' };

export default async function ReopenPage({ params, searchParams }: Props) {
  const [{ number, letter }, { thread }] = [await params, await searchParams];
  const result = await revisionSheet(await currentViewer(), { design: number, letter });
  return shown(result, (sheet) => (
    <PageFrame club={sheet.design.club.code}>
      <Sheet title={<RevisionTitle sheet={sheet} />}>
        <View letter="A" title="Reopen a thread">
          <Reopen sheet={sheet} number={Number(thread)} />
          <LinkButton href={addresses.revision(number, letter)} kind="quiet">
            Back to the sheet
          </LinkButton>
        </View>
      </Sheet>
    </PageFrame>
  ));
}

function Reopen({ sheet, number }: { readonly sheet: SheetView; readonly number: number }) {
  const thread = sheet.threads.find((t) => t.number === number);
  if (thread === undefined) notFound();
  const hidden = { threadId: thread.threadId, design: sheet.design.number, letter: sheet.revision.letter };
  return (
    <>
      <Thread thread={threadShown(thread)} />
      {thread.mayReopen ? (
        <TextForm
          action={settle}
          hidden={{ ...hidden, number: String(number), to: 'open' }}
          failed="Not reopened."
          submit="Reopen"
          kind="main"
          inputs={[{ kind: 'block', name: 'text', label: 'Why', rows: 3, max: 4000 }]}
        />
      ) : (
        <EmptyState>
          {thread.state === 'open' ? 'This thread is open.' : 'You cannot reopen this thread.'}
        </EmptyState>
      )}
    </>
  );
}
