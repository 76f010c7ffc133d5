// The map of gains against loads of a revision: how its loop behaves at each gain with each load, once it is simulated.
import type { Metadata } from 'next';
import Link from 'next/link';
import { addresses } from '@/app/_parts/addresses';
import { PageFrame } from '@/app/_parts/page-frame';
import { shown } from '@/app/_parts/shown';
import { Unchanging } from '@/app/_parts/unchanging/unchanging';
import { gainMap } from '@/lib/service/gain-map/gain-map';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import type { GainMapView } from '@/lib/service/views/gain-map';
import { GainMap } from '@/lib/ui/gain-map/gain-map';
import { whyMapped } from '@/lib/ui/gain-map/words';
import { Caution } from '@/lib/ui/notices/caution';
import { EmptyState } from '@/lib/ui/notices/empty-state';
import { Failure } from '@/lib/ui/notices/notice';
import { PlainTitle } from '@/lib/ui/sheet/plain-title';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { HashHead } from '@/lib/ui/sheet/title-block';
import { View } from '@/lib/ui/sheet/view';
import { MapWork } from './_parts/map-work';

interface Props {
  readonly params: Promise<{ number: string; letter: string }>;
  /** `was`: how work ended that was asked for without script. */
  readonly searchParams: Promise<{ was?: string }>;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { number, letter } = await params;
  return { title: `${number} ${letter}, gain map` };
}

export default async function GainMapPage({ params, searchParams }: Props) {
  const [{ number, letter }, { was }] = [await params, await searchParams];
  const result = await gainMap(await currentViewer(), { design: number, letter });
  return shown(result, (view) => (
    <PageFrame club={view.design.club.code}>
      <Sheet title={<Title view={view} />}>
        <View letter="A" title="Gain against load" id="map">
          <p>{whyMapped}</p>
          <State view={view} was={was} />
          <Caution title="Simulated, not tried">
            <p>
              A map shows where to begin, not where it is safe. Try each gain with the command limited, the
              output free of people, and a hand on the disconnect; first without load, then with it.
            </p>
          </Caution>
          <p className="hush">
            Simulated by method {view.method} from what was entered. Back to{' '}
            <Link href={`${addresses.revision(number, letter)}#section-loop`}>
              the loop on revision {letter}
            </Link>
            .
          </p>
        </View>
      </Sheet>
    </PageFrame>
  ));
}

function State({ view, was }: { readonly view: GainMapView; readonly was: string | undefined }) {
  const { map, design, letter } = view;
  if (map.kind === 'lacking')
    return (
      <EmptyState>
        <span>Not assessed. {map.sentence}</span>
      </EmptyState>
    );
  if (map.kind === 'there')
    return (
      <Unchanging from={['gain map', view.documentHash, view.method]}>
        <GainMap map={map} />
      </Unchanging>
    );
  return (
    <>
      {was === 'failed' ? (
        <Failure title="Not simulated.">It failed on our side. Please try again.</Failure>
      ) : null}
      {was === 'busy' ? (
        <Failure title="Not begun.">Too many maps are under way. Please try again.</Failure>
      ) : null}
      <MapWork
        page={addresses.gainMap(design.number, letter)}
        work={addresses.gainMapWork(design.number, letter)}
        running={map.kind === 'running' ? { done: map.done, total: map.total } : null}
      />
    </>
  );
}

function Title({ view: { design, letter, documentHash } }: { readonly view: GainMapView }) {
  return (
    <PlainTitle
      over={`${design.club.name}, ${design.number}`}
      title={design.title}
      cells={[
        {
          label: 'Revision',
          content: <Link href={addresses.revision(design.number, letter)}>{letter}</Link>,
        },
        { label: 'Record', content: <HashHead hash={documentHash} /> },
      ]}
    />
  );
}
