// The views of a revision that follow from its document alone: headline, ladder, what changed, sections, what was entered.
// They are rendered once and kept; what the club adds (hold points, remarks, decisions) stands between and beside them.
import type { ReactNode } from 'react';
import { addresses } from '@/app/_parts/addresses';
import { Entered } from '@/app/_parts/entered';
import type { SheetView } from '@/lib/service/views/sheet';
import { CheckTables } from '@/lib/ui/checks/check-tables';
import { FigureTable } from '@/lib/ui/checks/figure-table';
import type { RemarkPin } from '@/lib/ui/checks/remark-pin';
import { sectionCounts } from '@/lib/ui/checks/section-counts';
import { bySection } from '@/lib/ui/checks/sections';
import { workedPlaceOfFigure } from '@/lib/ui/checks/worked-place';
import { ChangedSince } from '@/lib/ui/compare/changed-since';
import { FaultTable } from '@/lib/ui/faults/fault-table';
import { Ladder } from '@/lib/ui/ladder/ladder';
import { CurvePlots } from '@/lib/ui/plot/curve-plots';
import { ShareBars, sharesIn } from '@/lib/ui/plot/share-bars';
import { HeadlineSentence } from '@/lib/ui/sheet/headline-sentence';
import { PartFold } from '@/lib/ui/sheet/part-fold';
import { View } from '@/lib/ui/sheet/view';
import { ViewIndex } from '@/lib/ui/sheet/view-index';
import { viewLetter } from '@/lib/ui/sheet/view-letter';
import { TrainDrawing } from '@/lib/ui/train-drawing/train-drawing';

/** The part of a sheet that these views are made of. */
export interface WorkedProps extends Pick<SheetView, 'assessment' | 'changed'> {
  readonly number: string;
  readonly revision: Pick<SheetView['revision'], 'letter' | 'document'>;
}

/** What is shown of a revision before its hold points. */
export function WeakestLink({ number, revision, assessment, changed }: WorkedProps) {
  const { headline, checks } = assessment;
  const weakest = checks.find((c) => c.key === headline.weakest);
  const sections = sectionsOf(assessment);
  const at = lettersAfter(changed);
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
        <Ladder checks={checks} headline={headline} workedHref={addresses.worked(number, revision.letter)} />
      </View>
    </>
  );
}

interface SectionViewsProps extends WorkedProps {
  readonly pins: readonly RemarkPin[];
  /** Address of the sheet in full where this one leaves off what is folded; undefined on the sheet in full, where it stands open. */
  readonly inFull: string | undefined;
}

/** What is shown of it after them. */
export function SectionViews({ pins, inFull, ...worked }: SectionViewsProps) {
  const { number, revision, assessment, changed } = worked;
  const { letter } = revision;
  const sections = sectionsOf(assessment);
  const at = lettersAfter(changed);
  const workedHref = addresses.worked(number, letter);
  return (
    <>
      {changed === null ? null : (
        <View
          letter="C"
          title={`Changed since revision ${changed.since}`}
          id="changed"
          aside={
            <a href={addresses.compare(number, changed.since, letter)}>
              compare {changed.since} with {letter} in full
            </a>
          }
        >
          <ChangedSince letter={letter} {...changed} inFull={inFull} />
        </View>
      )}
      {sections.map((s, i) => (
        <View
          key={s.key}
          letter={at(i)}
          title={s.label}
          id={`section-${s.key}`}
          aside={sectionCounts(s.checks) ?? undefined}
        >
          <Section
            section={s}
            workedHref={workedHref}
            pins={pins}
            inFull={inFull}
            weakest={assessment.headline.weakest}
            drawing={
              s.key !== 'gears' ? null : (
                <TrainDrawing
                  stages={revision.document.train.stages}
                  sheet={assessment.sheet}
                  figures={assessment.figures}
                />
              )
            }
            more={
              s.key !== 'loop' ? null : (
                <p>
                  <a href={addresses.gainMap(number, letter)}>
                    How the loop behaves at each gain with each load
                  </a>
                </p>
              )
            }
          />
        </View>
      ))}
      <View
        letter={at(sections.length)}
        title="As entered"
        id="entered"
        aside={
          <>
            {inFull === undefined ? null : (
              <>
                <a href={inFull}>the sheet in full</a> ·{' '}
              </>
            )}
            <a href={workedHref}>the worked sheet</a>
          </>
        }
      >
        <Entered document={revision.document} pins={pins} changed={changedIn(worked)} inFull={inFull} open />
      </View>
    </>
  );
}

function lettersAfter(changed: WorkedProps['changed']): (i: number) => string {
  // A and B are the ladder and the hold points.
  const first = changed === null ? 2 : 3;
  return (i) => viewLetter(first + i);
}

/** What this revision changed, for the marks on what was entered. */
export function changedIn({ revision, changed }: WorkedProps) {
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

/** Everything but the worked steps, by section. */
export function sectionsOf(assessment: SheetView['assessment']): SectionRows[] {
  const all = [...assessment.checks, ...assessment.figures, ...assessment.curves];
  return bySection(all).map(({ key, label }) => ({
    key,
    label,
    checks: assessment.checks.filter((c) => c.section === key),
    figures: assessment.figures.filter((f) => f.section === key),
    curves: assessment.curves.filter((c) => c.section === key),
  }));
}

interface SectionProps extends SectionFiguresProps {
  readonly inFull: string | undefined;
  /** Key of the weakest check, which is never folded away. */
  readonly weakest: string | null;
  /** What the section is of, drawn. */
  readonly drawing: ReactNode;
  /** What leads on from it. */
  readonly more: ReactNode;
}

function Section({ section, workedHref, pins, inFull, weakest, drawing, more }: SectionProps) {
  const { key, label, checks, figures, curves } = section;
  const count = figures.length === 1 ? '1 figure' : `${figures.length} figures`;
  const spokenOf = figures.some((f) => pins.some((p) => p.at === f.key));
  return (
    <>
      <CheckTables label={label} checks={checks} workedHref={workedHref} pins={pins} fold weakest={weakest} />
      {drawing}
      <CurvePlots curves={curves} workedHref={workedHref} inFull={inFull} />
      <ShareBars
        caption="Shares of the error at the output"
        shares={sharesIn(figures)}
        hrefOf={(figure) => workedPlaceOfFigure(workedHref, figure) ?? workedHref}
      />
      <FaultTable
        figures={figures}
        hrefOf={(figure) => workedPlaceOfFigure(workedHref, figure) ?? workedHref}
      />
      {figures.length === 0 ? null : (
        <PartFold
          id={`figures-${key}`}
          summary={count}
          what={`${count} of “${label}”`}
          inFull={spokenOf ? undefined : inFull}
          open
        >
          <SectionFigures section={section} workedHref={workedHref} pins={pins} />
        </PartFold>
      )}
      {more}
    </>
  );
}

interface SectionFiguresProps {
  readonly section: SectionRows;
  readonly workedHref: string;
  readonly pins: readonly RemarkPin[];
}

/** The figures of a section, which stand in a fold. */
export function SectionFigures({ section, ...table }: SectionFiguresProps) {
  return <FigureTable caption={`Figures: ${section.label}`} figures={section.figures} {...table} />;
}
