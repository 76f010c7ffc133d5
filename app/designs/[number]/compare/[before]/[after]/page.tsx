// Two revisions of a design, or a revision and the draft, side by side: what changed and what follows from it.
import type { Metadata } from 'next';
import Link from 'next/link';
import { addresses } from '@/app/_parts/addresses';
import { FollowInPlace } from '@/app/_parts/following/follow-in-place';
import { PageFrame } from '@/app/_parts/page-frame';
import { shown } from '@/app/_parts/shown';
import { Unchanging } from '@/app/_parts/unchanging/unchanging';
import { compareRevisions } from '@/lib/service/sheets/compare-revisions';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import type { CompareView, SideView } from '@/lib/service/views/compare';
import { CheckChanges } from '@/lib/ui/compare/check-changes';
import { FieldChanges } from '@/lib/ui/compare/field-changes';
import { FigureChanges } from '@/lib/ui/compare/figure-changes';
import { FindingChanges } from '@/lib/ui/compare/finding-changes';
import { HeadlineChange } from '@/lib/ui/compare/headline-change';
import { Moment } from '@/lib/ui/marks/time';
import { EmptyState } from '@/lib/ui/notices/empty-state';
import { MarginBlock } from '@/lib/ui/sheet/margin-block';
import { PlainTitle } from '@/lib/ui/sheet/plain-title';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { HashHead } from '@/lib/ui/sheet/title-block';
import { View } from '@/lib/ui/sheet/view';
import { ChangedCurves } from './_parts/changed-curves';
import { sideName } from './_parts/side-name';

interface Props {
  readonly params: Promise<{ number: string; before: string; after: string }>;
  /** `in=full`: nothing is left off. */
  readonly searchParams: Promise<{ in?: string }>;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { number, before, after } = await params;
  return { title: `${number}, ${before} against ${after}` };
}

export default async function ComparePage({ params, searchParams }: Props) {
  const [{ number, before, after }, { in: form }] = [await params, await searchParams];
  const inFull = form === 'full' ? undefined : `${addresses.compare(number, before, after)}?in=full`;
  const result = await compareRevisions(await currentViewer(), { design: number, before, after });
  return shown(result, (view) => (
    <PageFrame club={view.design.club.code}>
      <Sheet
        title={<CompareTitle view={view} />}
        marginLabel="Other comparisons"
        margin={<Others view={view} />}
      >
        <Unchanging
          from={['comparison', view.design.number, ...[view.before, view.after].map(factsOf), inFull]}
        >
          <Changes view={view} inFull={inFull} />
        </Unchanging>
      </Sheet>
      <FollowInPlace
        sides={[view.before, view.after].map((side) => followed(view, side))}
        folds={addresses.compareFold(number, before, after)}
      />
    </PageFrame>
  ));
}

/** All that a side says follows from its document and the method. */
function factsOf({ letter, documentHash, method }: SideView) {
  return [letter, documentHash, method];
}

/** Where the numbers of a side are followed from. */
function followed({ design }: CompareView, side: SideView) {
  const words = sideName(side);
  return {
    label: words.charAt(0).toUpperCase() + words.slice(1),
    href: addresses.trace(design.number, side.letter),
  };
}

interface ChangesProps {
  readonly view: CompareView;
  /** Address of the comparison in full where this one leaves off what is folded. */
  readonly inFull: string | undefined;
}

function Changes({ view, inFull }: ChangesProps) {
  const { comparison: c } = view;
  const [before, after] = [sideName(view.before), sideName(view.after)];
  const letter = view.after.letter === 'draft' ? null : view.after.letter;
  if (c.fields.length + c.items.length + c.figures.length + c.checks.length === 0) {
    return (
      <EmptyState>
        {before} and {after} say the same.
      </EmptyState>
    );
  }
  // A draft has no sheet of its own: its numbers are looked up on the revision it is compared with.
  const sheetHref = addresses.revision(view.design.number, letter ?? view.before.letter);
  const crossed = c.checks.filter((check) => check.crossed).length;
  return (
    <>
      <HeadlineChange comparison={c} before={before} after={after} />
      <View letter="A" title="What was changed" id="fields">
        <FieldChanges fields={c.fields} items={c.items} before={before} after={after} letter={letter} />
      </View>
      <View
        letter="B"
        title="Checks"
        id="checks"
        aside={crossed === 0 ? undefined : `${crossed} crossed what is required`}
      >
        {c.checks.length === 0 ? (
          <p className="hush">No check moved.</p>
        ) : (
          <CheckChanges caption="Changed checks" checks={c.checks} sheetHref={sheetHref} />
        )}
      </View>
      <View letter="C" title="Findings" id="findings">
        <FindingChanges raised={c.raised} cleared={c.cleared} restated={c.restated} />
      </View>
      <View letter="D" title="Figures" id="figures">
        {c.figures.length === 0 ? (
          <p className="hush">No figure moved.</p>
        ) : (
          <details>
            <summary>
              {c.figures.length === 1 ? '1 figure moved' : `${c.figures.length} figures moved`}
            </summary>
            <FigureChanges caption="Changed figures" figures={c.figures} sheetHref={sheetHref} />
          </details>
        )}
      </View>
      {view.curves.length + view.shares.length === 0 ? null : (
        <View letter="E" title="Curves" id="curves">
          <ChangedCurves view={view} inFull={inFull} />
        </View>
      )}
    </>
  );
}

function CompareTitle({ view }: { readonly view: CompareView }) {
  const { design } = view;
  return (
    <PlainTitle
      over={`${design.club.name}, ${design.number}`}
      title={design.title}
      cells={[
        { label: 'Before', content: <Side side={view.before} design={design.number} /> },
        { label: 'After', content: <Side side={view.after} design={design.number} /> },
      ]}
    />
  );
}

function Side({ side, design }: { readonly side: SideView; readonly design: string }) {
  const href = side.letter === 'draft' ? addresses.draft(design) : addresses.revision(design, side.letter);
  return (
    <>
      <Link href={href}>{sideName(side)}</Link>{' '}
      <span className="hush">
        <Moment at={side.at} day />, <HashHead hash={side.documentHash} />, method {side.method}
      </span>
    </>
  );
}

function Others({ view }: { readonly view: CompareView }) {
  const letters = view.revisions.map((r) => r.letter).toReversed();
  const pairs = letters.flatMap((a, i) => letters.slice(i + 1).map((b) => [a, b] as const));
  return (
    <MarginBlock title="Other comparisons">
      <ul className="plain-list">
        {pairs.map(([a, b]) => (
          <li key={`${a}${b}`}>
            <Link
              href={addresses.compare(view.design.number, a, b)}
              aria-current={a === view.before.letter && b === view.after.letter ? 'page' : undefined}
            >
              {a} with {b}
            </Link>
          </li>
        ))}
      </ul>
    </MarginBlock>
  );
}
