// A new design, begun from a starter.
import type { Metadata } from 'next';
import { addresses } from '@/app/_parts/addresses';
import { PageFrame } from '@/app/_parts/page-frame';
import { shown } from '@/app/_parts/shown';
import { TextForm } from '@/app/_parts/text-form';
import { clubShelf } from '@/lib/service/designs/shelf';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import { LinkButton } from '@/lib/ui/forms/button';
import { EmptyState } from '@/lib/ui/notices/empty-state';
import { PlainTitle } from '@/lib/ui/sheet/plain-title';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { View } from '@/lib/ui/sheet/view';
import { startDesign } from './actions';

interface Props {
  readonly params: Promise<{ club: string }>;
}

export const metadata: Metadata = { title: 'New design' };

export default async function NewDesignPage({ params }: Props) {
  const { club } = await params;
  const result = await clubShelf(await currentViewer(), { club });
  return shown(result, ({ starters, mayCreate, club: { name } }) => (
    <PageFrame club={club} current="shelf">
      <Sheet title={<PlainTitle over={name} title="New design" />}>
        {mayCreate ? (
          <View letter="A" title="Begin from a starter">
            <p>
              A starter is a whole actuator with believable numbers. Take the one most like yours and change
              what differs.
            </p>
            <dl className="starters">
              {starters.map((s) => (
                <div key={s.key}>
                  <dt>{s.label}</dt>
                  <dd className="hush">{s.about}</dd>
                </div>
              ))}
            </dl>
            <TextForm
              action={startDesign}
              hidden={{ club }}
              failed="Not started."
              submit="Start the draft"
              kind="main"
              inputs={[
                {
                  kind: 'line',
                  name: 'title',
                  label: 'Title',
                  max: 80,
                  help: 'What it is, for example “Gate lifter, north side”.',
                },
                {
                  kind: 'choice',
                  name: 'starter',
                  label: 'Starter',
                  options: Object.fromEntries(starters.map((s) => [s.key, s.label])),
                },
              ]}
            />
          </View>
        ) : (
          <EmptyState>
            Your role in this club reads and does not draw.{' '}
            <LinkButton href={addresses.shelf(club)}>Back to the shelf</LinkButton>
          </EmptyState>
        )}
      </Sheet>
    </PageFrame>
  ));
}
