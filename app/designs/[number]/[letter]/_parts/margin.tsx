// The margin of a revision: cautions, findings with what was decided about them, and the threads.
import { addresses } from '@/app/_parts/addresses';
import { TextForm } from '@/app/_parts/text-form';
import type { FindingView } from '@/lib/service/views/finding';
import type { SheetView } from '@/lib/service/views/sheet';
import { FindingList } from '@/lib/ui/findings/finding-list';
import { Actions, LinkButton } from '@/lib/ui/forms/button';
import { Moment } from '@/lib/ui/marks/time';
import { Caution } from '@/lib/ui/notices/caution';
import { MarginBlock } from '@/lib/ui/sheet/margin-block';
import { reassess } from '../actions';
import { DecideLink } from './decide-link';
import { pinsOf } from './pins';
import { Threads } from './threads';

/** Whether the margin holds a form, which must be React's own. */
export function hasForms({ may, threads }: SheetView): boolean {
  return may.reassess || threads.some((t) => t.mayReply || t.mayResolve);
}

/** The findings with what was decided about them: no form among them. */
export function Findings({ sheet }: { readonly sheet: SheetView }) {
  const byKey = new Map(sheet.findings.map((f) => [f.finding.key, f]));
  return (
    <MarginBlock title="Findings" id="findings">
      <FindingList
        findings={sheet.findings.map((f) => f.finding)}
        pins={pinsOf(sheet)}
        under={(finding) => <Decision view={byKey.get(finding.key)} sheet={sheet} />}
      />
    </MarginBlock>
  );
}

/** What stands in the margin below the findings. */
export function BelowFindings({ sheet }: { readonly sheet: SheetView }) {
  return (
    <>
      <MarginBlock title="Remarks" id="remarks">
        <Threads sheet={sheet} />
        {sheet.may.write ? (
          <Actions>
            <LinkButton href={addresses.remark(sheet.design.number, sheet.revision.letter)}>
              Write a remark
            </LinkButton>
          </Actions>
        ) : null}
      </MarginBlock>
      {sheet.may.reassess ? <Reassess sheet={sheet} /> : null}
      <Caution grade="warning" title="Before power">
        <p>
          Hold the rig down, keep out of the arm’s reach, have a stop at hand. Lithium packs burn; rotors and
          arms store energy. Local rules and competent persons come first.{' '}
          <a href={addresses.cautions}>All cautions</a>
        </p>
      </Caution>
    </>
  );
}

function Reassess({ sheet }: { readonly sheet: SheetView }) {
  return (
    <MarginBlock title="Method">
      <p className="hush">
        Assessed with method {sheet.shown.method}; the present one is {sheet.presentMethod}. The old
        assessment stays beside the new.
      </p>
      <TextForm
        action={reassess}
        hidden={idsOf(sheet)}
        failed="Not assessed."
        submit="Assess with the present method"
        inputs={[]}
      />
    </MarginBlock>
  );
}

function idsOf(sheet: SheetView) {
  return { design: sheet.design.number, letter: sheet.revision.letter };
}

function Decision({ view, sheet }: { readonly view: FindingView | undefined; readonly sheet: SheetView }) {
  if (view === undefined) return null;
  const { disposition, lapsed, mayDispose, whyNot, finding } = view;
  return (
    <div className="decision">
      {disposition === null ? null : (
        <p>
          <strong>{disposition.label}</strong> by {disposition.by.name}, <Moment at={disposition.at} day />,
          on revision {disposition.madeOn}: {disposition.reason}
        </p>
      )}
      {lapsed === null ? null : (
        <p className="hush">
          {lapsed.label} by {lapsed.by.name} on revision {lapsed.madeOn}, lapsed because the facts changed.
        </p>
      )}
      {disposition === null && mayDispose ? (
        <DecideLink sheet={sheet} about={finding.key} words={finding.text} />
      ) : null}
      {disposition === null && whyNot !== null ? <p className="hush">{whyNot}</p> : null}
    </div>
  );
}
