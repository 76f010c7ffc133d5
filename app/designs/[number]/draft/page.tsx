// The working draft: every field of the design, with what holds and what breaks first shown while one types.
import type { Metadata } from 'next';
import Link from 'next/link';
import { addresses } from '@/app/_parts/addresses';
import { PageFrame } from '@/app/_parts/page-frame';
import { shown } from '@/app/_parts/shown';
import { openDraft } from '@/lib/service/drafts/open-draft';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import type { DraftView } from '@/lib/service/views/draft';
import { TitleBlock } from '@/lib/ui/sheet/title-block';
import { Editor } from './_parts/editor';
import { StartAnewForm } from './_parts/start-anew-form';

interface Props {
  readonly params: Promise<{ number: string }>;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  return { title: `${(await params).number}, draft` };
}

export default async function DraftPage({ params }: Props) {
  const { number } = await params;
  const result = await openDraft(await currentViewer(), { design: number });
  return shown(result, (draft) => (
    <PageFrame club={draft.design.club.code}>
      <Editor
        design={number}
        version={draft.version}
        content={draft.content}
        first={draft.assessment}
        mayEdit={draft.mayEdit}
        warning={draft.warning}
        saveAddress={addresses.saveDraft(number)}
        title={<DraftTitle draft={draft} />}
        publishAs={draft.mayPublish ? draft.nextLetter : null}
        anew={
          draft.mayEdit && draft.latest !== null && draft.ahead ? (
            <StartAnewForm design={number} letter={draft.latest.letter} version={draft.version} />
          ) : null
        }
        compareAddress={
          draft.latest === null ? null : addresses.compare(number, draft.latest.letter, 'draft')
        }
      />
    </PageFrame>
  ));
}

function DraftTitle({ draft }: { readonly draft: DraftView }) {
  const { latest, design } = draft;
  const since =
    latest === null ? (
      'not published yet'
    ) : (
      <>
        after <Link href={addresses.revision(design.number, latest.letter)}>revision {latest.letter}</Link>
      </>
    );
  return (
    <TitleBlock
      club={draft.design.club.name}
      title={draft.design.title}
      drawing={draft.design.number}
      revision={null}
      standing="In preparation"
      standingNote={since}
      issued={null}
      drawnBy={draft.updatedBy.name}
      hash={null}
      method={draft.assessment.method}
    />
  );
}
