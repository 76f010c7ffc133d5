// The views of a revision that follow from its document alone: headline, ladder, what changed, sections, what was entered.
import Link from 'next/link';
import type { ReactNode } from 'react';
import { addresses } from '@/app/_parts/addresses';
import { Entered } from '@/app/_parts/entered';
import type { SheetView } from '@/lib/service/views/sheet';
import { CheckTables } from '@/lib/ui/checks/check-tables';
import { FigureTable } from '@/lib/ui/checks/figure-table';
import { bySection } from '@/lib/ui/checks/sections';
import { ChangedSince } from '@/lib/ui/compare/changed-since';
import { Ladder } from '@/lib/ui/ladder/ladder';
import { CurvePlot } from '@/lib/ui/plot/curve-plot';
import { HeadlineSentence } from '@/lib/ui/sheet/headline-sentence';
import { View } from '@/lib/ui/sheet/view';
import { ViewIndex } from '@/lib/ui/sheet/view-index';
import { pinsOf } from './pins';

// I and O are left out, as on drawings: they read as figures.
const letters = 'CDEFGHJKLMNPQ';

export function Worked({ sheet, holdPoints }: { readonly sheet: SheetView; readonly holdPoints: ReactNode }) {
  const { assessment, design, revision } = sheet;
  const { headline, checks } = assessment;
  const weakest = checks.find((c) => c.key === headline.weakest);
  const sections = sectionsOf(sheet);
  const { changed } = sheet;
  const first = changed === null ? 0 : 1;
  const at = (i: number) => letters[first + i] ?? '';
  return (
    <>
      <HeadlineSentence headline={headline} label={weakest?.label ?? null} mode={weakest?.mode ?? null} />
      <ViewIndex
        views={[
          { letter: 'A', title: 'What holds', id: 'ladder' },
          { letter: 'B', title: 'Hold points', id: 'hold-points' },
          ...(changed === null
            ? []
            : [{ letter: 'C', title: `Changed since ${changed.since}`, id: 'changed' }]),
          ...sections.map((s, i) => ({ letter: at(i), title: s.label, id: `section-${s.key}` })),
          { letter: at(sections.length), title: 'As entered', id: 'entered' },
          { letter: null, title: 'Findings', id: 'findings' },
          { letter: null, title: 'Remarks', id: 'remarks' },
        ]}
      />
      <View letter="A" title="What holds, in rising order" id="ladder">
        <Ladder checks={checks} headline={headline} />
      </View>
      {holdPoints}
      {changed === null ? null : (
        <View
          letter="C"
          title={`Changed since revision ${changed.since}`}
          id="changed"
          aside={
            <Link href={addresses.compare(design.number, changed.since, revision.letter)}>
              compare {changed.since} with {revision.letter} in full
            </Link>
          }
        >
          <ChangedSince letter={revision.letter} {...changed} />
        </View>
      )}
      {sections.map((s, i) => (
        <View key={s.key} letter={at(i)} title={s.label} id={`section-${s.key}`}>
          <Section section={s} sheet={sheet} />
        </View>
      ))}
      <View
        letter={at(sections.length)}
        title="As entered"
        id="entered"
        aside={<Link href={addresses.worked(design.number, revision.letter)}>the worked sheet</Link>}
      >
        <Entered document={revision.document} pins={pinsOf(sheet)} changed={changedIn(sheet)} />
      </View>
    </>
  );
}

function changedIn({ revision, changed }: SheetView) {
  if (changed === null) return undefined;
  return { letter: revision.letter, paths: new Set(changed.fields.map((f) => f.path)) };
}

interface SectionRows {
  readonly key: string;
  readonly label: string;
  readonly checks: SheetView['assessment']['checks'];
  readonly figures: SheetView['assessment']['figures'];
  readonly curves: SheetView['assessment']['curves'];
}

function sectionsOf({ assessment }: SheetView): SectionRows[] {
  const all = [...assessment.checks, ...assessment.figures, ...assessment.curves];
  return bySection(all).map(({ key, label }) => ({
    key,
    label,
    checks: assessment.checks.filter((c) => c.section === key),
    figures: assessment.figures.filter((f) => f.section === key),
    curves: assessment.curves.filter((c) => c.section === key),
  }));
}

function Section({ section, sheet }: { readonly section: SectionRows; readonly sheet: SheetView }) {
  const workedHref = addresses.worked(sheet.design.number, sheet.revision.letter);
  const pins = pinsOf(sheet);
  const { label, checks, figures, curves } = section;
  return (
    <>
      <CheckTables
        label={label}
        checks={checks}
        workedHref={workedHref}
        pins={pins}
        fold
        weakest={sheet.assessment.headline.weakest}
      />
      {curves.map((c) => (
        <CurvePlot key={c.key} curve={c} />
      ))}
      {figures.length === 0 ? null : (
        <details>
          <summary>{figures.length === 1 ? '1 figure' : `${figures.length} figures`}</summary>
          <FigureTable caption={`Figures: ${label}`} figures={figures} workedHref={workedHref} pins={pins} />
        </details>
      )}
    </>
  );
}
