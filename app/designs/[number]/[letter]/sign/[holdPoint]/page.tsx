// Signing at a hold point: everything that the signature binds, in full, then the password.
import type { Metadata } from 'next';
import { addresses } from '@/app/_parts/addresses';
import { PageFrame } from '@/app/_parts/page-frame';
import { shown } from '@/app/_parts/shown';
import { TextForm } from '@/app/_parts/text-form';
import type { HoldPoint } from '@/lib/review/hold-points';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import { signingPage } from '@/lib/service/signing/signing-page';
import type { SigningView } from '@/lib/service/views/signing';
import { CheckTables } from '@/lib/ui/checks/check-tables';
import { bySection } from '@/lib/ui/checks/sections';
import { FindingList } from '@/lib/ui/findings/finding-list';
import { LinkButton } from '@/lib/ui/forms/button';
import { Moment, printDay, printTime } from '@/lib/ui/marks/time';
import { Caution } from '@/lib/ui/notices/caution';
import { Failure } from '@/lib/ui/notices/notice';
import { HeadlineSentence } from '@/lib/ui/sheet/headline-sentence';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { TitleBlock } from '@/lib/ui/sheet/title-block';
import { View } from '@/lib/ui/sheet/view';
import { signHere } from './actions';

interface Props {
  readonly params: Promise<{ number: string; letter: string; holdPoint: string }>;
}

export const metadata: Metadata = { title: 'Sign off' };

export default async function SignPage({ params }: Props) {
  const { number, letter, holdPoint } = await params;
  // The use case checks the hold point; an address may hold anything.
  const input = { design: number, letter, holdPoint: holdPoint as HoldPoint };
  const result = await signingPage(await currentViewer(), input);
  return shown(result, (view) => (
    <PageFrame club={view.design.club.code}>
      <Sheet title={<Title view={view} />}>
        <Findings view={view} />
        <Checks view={view} />
        <Bound view={view} />
        <Sign view={view} />
      </Sheet>
    </PageFrame>
  ));
}

function Title({ view }: { readonly view: SigningView }) {
  const { design, revision, holdPoint, assessment } = view;
  return (
    <TitleBlock
      club={design.club.name}
      title={`${design.title}: sign off ${holdPoint.label.toLowerCase()}`}
      drawing={design.number}
      revision={revision.letter}
      standing={holdPoint.state === 'released' ? 'Released' : 'To be signed'}
      issued={{ day: printDay(revision.publishedAt), hour: printTime(revision.publishedAt).slice(11) }}
      drawnBy={revision.author.name}
      hash={revision.documentHash}
      method={assessment.method}
    />
  );
}

function Findings({ view }: { readonly view: SigningView }) {
  const open = view.findings.filter((f) => f.disposition === null);
  const decided = view.findings.filter((f) => f.disposition !== null);
  const decisions = new Map(decided.map((f) => [f.finding.key, f.disposition]));
  return (
    <>
      <View letter="A" title="Open findings">
        <FindingList findings={open.map((f) => f.finding)} none="No finding is open." />
      </View>
      <View letter="B" title="Findings decided">
        <FindingList
          findings={decided.map((f) => f.finding)}
          none="No finding was decided on."
          under={(finding) => {
            const d = decisions.get(finding.key);
            return d == null ? null : (
              <p>
                <strong>{d.label}</strong> by {d.by.name}, <Moment at={d.at} day />: {d.reason}
              </p>
            );
          }}
        />
      </View>
    </>
  );
}

function Checks({ view }: { readonly view: SigningView }) {
  const { assessment, design, revision } = view;
  const weakest = assessment.checks.find((c) => c.key === assessment.headline.weakest);
  return (
    <View letter="C" title="Checks">
      <HeadlineSentence
        headline={assessment.headline}
        label={weakest?.label ?? null}
        mode={weakest?.mode ?? null}
      />
      {bySection(assessment.checks).map((s) => (
        <section key={s.key} className="check-section">
          <h3>{s.label}</h3>
          <CheckTables
            label={s.label}
            checks={s.rows}
            workedHref={addresses.worked(design.number, revision.letter)}
          />
        </section>
      ))}
    </View>
  );
}

function Bound({ view }: { readonly view: SigningView }) {
  const { bound, threads } = view;
  const open = threads.filter((t) => t.state === 'open').length;
  return (
    <View letter="D" title="What the signature binds">
      <p>What this hold point requires (version {bound.requirementsVersion}):</p>
      <ul className="plain-list">
        {bound.requirements.map((r) => (
          <li key={r}>{r}</li>
        ))}
      </ul>
      <p>
        {threads.length === 0
          ? 'No thread was opened.'
          : `${threads.length - open} of ${threads.length} threads are resolved.`}
      </p>
      <dl className="bound">
        <dt>Document</dt>
        <dd>
          <code>{bound.documentHash}</code>
        </dd>
        <dt>Assessment, method {bound.method}</dt>
        <dd>
          <code>{bound.assessmentHash}</code>
        </dd>
      </dl>
    </View>
  );
}

function Sign({ view }: { readonly view: SigningView }) {
  const { design, revision, holdPoint, bound } = view;
  return (
    <View letter="E" title="Sign">
      <blockquote className="meaning">{bound.meaning}</blockquote>
      <Caution grade="danger" title="A signature releases people to stand near this machine.">
        <p>
          Sign only for what you have read and understood. Local rules and competent persons come first; this
          is no legal certificate.
        </p>
      </Caution>
      {holdPoint.maySign ? (
        <TextForm
          action={signHere}
          hidden={{
            design: design.number,
            letter: revision.letter,
            holdPoint: holdPoint.key,
            seenDocumentHash: bound.documentHash,
            seenAssessmentHash: bound.assessmentHash,
            meaningVersion: String(bound.meaningVersion),
          }}
          failed="Not signed."
          submit={`Sign off ${holdPoint.label.toLowerCase()}`}
          kind="main"
          inputs={[
            {
              kind: 'line',
              name: 'password',
              label: 'Your password',
              type: 'password',
              autoComplete: 'current-password',
              help: 'Asked for at every signature.',
            },
          ]}
        />
      ) : (
        <Failure title="You cannot sign here.">{holdPoint.whyNot ?? 'This hold point is not open.'}</Failure>
      )}
      {holdPoint.blockers.length === 0 ? null : (
        <ul className="plain-list">
          {holdPoint.blockers.map((b) => (
            <li key={b.key}>
              {b.sentence} <span className="hush">{b.remover}</span>
            </li>
          ))}
        </ul>
      )}
      <LinkButton href={addresses.revision(design.number, revision.letter)} kind="quiet">
        Back to the sheet without signing
      </LinkButton>
    </View>
  );
}
