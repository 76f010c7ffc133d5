// A new remark: what it speaks of and what it says.
import type { Metadata } from 'next';
import { addresses } from '@/app/_parts/addresses';
import { PageFrame } from '@/app/_parts/page-frame';
import { shown } from '@/app/_parts/shown';
import { TextForm } from '@/app/_parts/text-form';
import { fieldsIn, rowsOf } from '@/lib/preview/rows';
import { fieldWords } from '@/lib/preview/words';
import { revisionSheet } from '@/lib/service/sheets/revision-sheet';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import type { SheetView } from '@/lib/service/views/sheet';
import { LinkButton } from '@/lib/ui/forms/button';
import { EmptyState } from '@/lib/ui/notices/empty-state';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { View } from '@/lib/ui/sheet/view';
import { RevisionTitle } from '../_parts/revision-title';
import { remark } from '../actions';

interface Props {
  readonly params: Promise<{ number: string; letter: string }>;
  readonly searchParams: Promise<{ at?: string }>;
}

export const metadata: Metadata = { title: 'New remark' };

export default async function RemarkPage({ params, searchParams }: Props) {
  const [{ number, letter }, { at }] = [await params, await searchParams];
  const result = await revisionSheet(await currentViewer(), { design: number, letter });
  return shown(result, (sheet) => (
    <PageFrame club={sheet.design.club.code}>
      <Sheet title={<RevisionTitle sheet={sheet} />}>
        <View letter="A" title="New remark">
          {sheet.may.write ? (
            <TextForm
              action={remark}
              hidden={{ design: number, letter }}
              failed="Not sent."
              submit="Send the remark"
              kind="main"
              inputs={[
                {
                  kind: 'choice',
                  name: 'anchor',
                  label: 'It speaks of',
                  value: at ?? 'revision:',
                  options: anchorsOf(sheet),
                },
                {
                  kind: 'block',
                  name: 'text',
                  label: 'Remark',
                  rows: 8,
                  max: 4000,
                  help: '**Two stars** make words bold, a line that begins with - becomes a list. An open thread stands against every hold point until it is resolved.',
                },
              ]}
            />
          ) : (
            <EmptyState>Your role in this club reads and does not write remarks.</EmptyState>
          )}
          <LinkButton href={addresses.revision(number, letter)} kind="quiet">
            Back to the sheet
          </LinkButton>
        </View>
      </Sheet>
    </PageFrame>
  ));
}

/** Everything on the sheet that a remark can speak of: kind and path → words. */
function anchorsOf({ assessment, revision }: SheetView): Record<string, string> {
  const { document } = revision;
  const fields = rowsOf({ document, pending: {} })
    .flatMap(fieldsIn)
    .map(({ path }) => [`field:${path}`, `Entered: ${fieldWords(document, path)}`] as const);
  return Object.fromEntries([
    ['revision:', 'The whole revision'],
    ...assessment.findings.map((f) => [`finding:${f.key}`, `Finding: ${f.text}`] as const),
    ...assessment.checks.map((c) => [`check:${c.key}`, `Check: ${c.label}, ${c.mode}`] as const),
    ...assessment.figures.map((f) => [`figure:${f.key}`, `Figure: ${f.label} (${f.section})`] as const),
    ...fields,
  ]);
}
