// The club's own coupon tests, beside what the catalogue holds in their place.
import type { Metadata } from 'next';
import Link from 'next/link';
import { addresses } from '@/app/_parts/addresses';
import { PageFrame } from '@/app/_parts/page-frame';
import { shown } from '@/app/_parts/shown';
import { TextForm } from '@/app/_parts/text-form';
import { couponChoices } from '@/lib/service/coupons/choices';
import { couponTests } from '@/lib/service/coupons/coupon-tests';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import type { CouponTestsView, CouponTestView } from '@/lib/service/views/coupons';
import { Moment } from '@/lib/ui/marks/time';
import { WordMark } from '@/lib/ui/marks/word-mark';
import { EmptyState } from '@/lib/ui/notices/empty-state';
import { PlainTitle } from '@/lib/ui/sheet/plain-title';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { View } from '@/lib/ui/sheet/view';
import { RuledTable } from '@/lib/ui/table/ruled-table';
import { enterTest, withdrawTest } from './actions';

interface Props {
  readonly params: Promise<{ club: string }>;
}

export const metadata: Metadata = { title: 'Coupon tests' };

export default async function CouponsPage({ params }: Props) {
  const { club } = await params;
  const result = await couponTests(await currentViewer(), { club });
  return shown(result, (view) => (
    <PageFrame club={club} current="coupons">
      <Sheet title={<CouponsTitle view={view} />}>
        <View letter="A" title="Coupons the club has broken">
          <p>
            A test takes the place of the <Link href={addresses.materials}>catalogue’s value</Link> in every
            draft of the club, with its own scatter. A revision keeps the tests it was published with. Break
            the coupons as the part is printed: same spool, settings and direction, solid, at 23 °C.
          </p>
          {view.tests.length === 0 ? (
            <EmptyState>No coupon has been broken yet; the catalogue’s values are used.</EmptyState>
          ) : (
            <Tests view={view} />
          )}
        </View>
        {view.mayEnter ? (
          <View letter="B" title="Enter a test">
            <EnterTest club={club} />
          </View>
        ) : null}
      </Sheet>
    </PageFrame>
  ));
}

function CouponsTitle({ view }: { readonly view: CouponTestsView }) {
  const count = view.tests.filter((t) => t.counts).length;
  return (
    <PlainTitle
      over={view.club.name}
      title="Coupon tests"
      cells={[{ label: 'In use', content: String(count) }]}
    />
  );
}

function Tests({ view }: { readonly view: CouponTestsView }) {
  return (
    <RuledTable
      caption="Coupon tests of the club, the latest first"
      columns={[
        { label: 'Material' },
        { label: 'Property' },
        { label: 'Mean ± deviation', kind: 'number' },
        { label: 'Coupons', kind: 'number' },
        { label: 'Catalogue', kind: 'number' },
        { label: 'Printed and tested', kind: 'words' },
        { label: 'State' },
      ]}
      rows={view.tests.map((t) => ({
        key: t.testId,
        tone: t.counts ? ('plain' as const) : ('struck' as const),
        cells: [
          t.material,
          t.property,
          t.printed,
          String(t.count),
          t.catalogue ?? 'none',
          <span key="process">
            {t.process}{' '}
            <span className="hush">
              {t.by}, <Moment at={t.at} day />
            </span>
          </span>,
          <State key="state" club={view.club.code} test={t} mayEnter={view.mayEnter} />,
        ],
      }))}
    />
  );
}

interface StateProps {
  readonly club: string;
  readonly test: CouponTestView;
  readonly mayEnter: boolean;
}

function State({ club, test, mayEnter }: StateProps) {
  if (test.withdrawn !== null)
    return (
      <>
        <WordMark kind="struck">withdrawn</WordMark>{' '}
        <span className="hush">
          {test.withdrawn.by}: {test.withdrawn.reason}
        </span>
      </>
    );
  if (!test.counts) return <WordMark kind="struck">followed by a later one</WordMark>;
  if (!mayEnter) return <>in use</>;
  return (
    <details>
      <summary>in use; withdraw</summary>
      <TextForm
        action={withdrawTest}
        hidden={{ club, testId: test.testId }}
        failed="Not withdrawn."
        submit="Withdraw"
        kind="quiet"
        inputs={[{ kind: 'line', name: 'reason', label: 'Reason', max: 500 }]}
      />
    </details>
  );
}

function EnterTest({ club }: { readonly club: string }) {
  return (
    <TextForm
      action={enterTest}
      hidden={{ club }}
      failed="Not entered."
      submit="Enter the test"
      kind="main"
      inputs={[
        { kind: 'choice', name: 'material', label: 'Material and process', options: couponChoices.materials },
        { kind: 'choice', name: 'property', label: 'Property', options: couponChoices.properties },
        { kind: 'line', name: 'mean', label: 'Mean', help: 'In MPa, or with its unit: 2.9 GPa.', max: 40 },
        { kind: 'line', name: 'deviation', label: 'Standard deviation', help: 'In MPa.', max: 40 },
        { kind: 'line', name: 'count', label: 'Coupons broken', help: 'At least three.', max: 10 },
        {
          kind: 'line',
          name: 'process',
          label: 'Printer, settings, date',
          help: 'So that another can judge what the test stands for.',
          max: 160,
        },
      ]}
    />
  );
}
