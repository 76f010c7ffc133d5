// The worked sheet of a revision: every step with its formula, its numbers, its source, and where each input comes from.
import type { Metadata } from 'next';
import Link from 'next/link';
import { addresses } from '@/app/_parts/addresses';
import { Entered } from '@/app/_parts/entered';
import { PageFrame } from '@/app/_parts/page-frame';
import { shown } from '@/app/_parts/shown';
import { Unchanging } from '@/app/_parts/unchanging/unchanging';
import { fieldWords, partWords } from '@/lib/preview/words';
import { handbookFormulas, handbookRow } from '@/lib/service/handbook/handbook';
import { revisionSheet } from '@/lib/service/sheets/revision-sheet';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import type { SheetView } from '@/lib/service/views/sheet';
import { bySection } from '@/lib/ui/checks/sections';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { View } from '@/lib/ui/sheet/view';
import { ViewIndex } from '@/lib/ui/sheet/view-index';
import { viewLetter } from '@/lib/ui/sheet/view-letter';
import { WorkedSheet } from '@/lib/ui/worked/worked-sheet';
import { RevisionTitle } from '../_parts/revision-title';

interface Props {
  readonly params: Promise<{ number: string; letter: string }>;
}

export const metadata: Metadata = { title: 'Worked sheet' };

export default async function WorkedPage({ params }: Props) {
  const { number, letter } = await params;
  const result = await revisionSheet(await currentViewer(), { design: number, letter });
  return shown(result, (sheet) => (
    <PageFrame club={sheet.design.club.code}>
      <Sheet title={<RevisionTitle sheet={sheet} />}>
        <p>
          Every number on{' '}
          <Link href={addresses.revision(number, letter)}>the sheet of revision {letter}</Link> is worked
          here, in the order of the power flow. Each input leads to the step, the entered field or the
          catalogue value that it comes from.
        </p>
        <Unchanging from={['worked sheet', sheet.revision.documentHash, sheet.shown.hash]}>
          <Steps sheet={sheet} />
        </Unchanging>
      </Sheet>
    </PageFrame>
  ));
}

function Steps({ sheet }: { readonly sheet: SheetView }) {
  const { document } = sheet.revision;
  const sections = bySection(sheet.assessment.sheet);
  const links = {
    field: (path: string) => ({ text: fieldWords(document, path), href: `#field-${path}` }),
    catalog: (row: string) => {
      const known = handbookRow(row);
      return {
        text: known?.words ?? `catalogue, ${row}`,
        // What no page of the handbook shows has its source on the sheet, where the number is followed.
        href: known?.ofMaterial === false ? null : `${addresses.materials}#row-${row}`,
      };
    },
  };
  return (
    <>
      <ViewIndex
        views={[
          ...sections.map((s, i) => ({ letter: viewLetter(i), title: s.label, id: `worked-${s.key}` })),
          { letter: viewLetter(sections.length), title: 'As entered', id: 'entered' },
        ]}
      />
      <p className="hush">
        Numbers put into a formula are in SI base units, rounded here to four digits; the working is not
        rounded.
      </p>
      {sections.map((s, i) => (
        <View key={s.key} letter={viewLetter(i)} title={s.label} id={`worked-${s.key}`}>
          <WorkedSheet
            steps={s.rows}
            all={sheet.assessment.sheet}
            formulas={handbookFormulas()}
            partLabel={(path) => partWords(document, path)}
            links={links}
            formulaHref={(key) => `${addresses.handbook}#formula-${key}`}
          />
        </View>
      ))}
      <View letter={viewLetter(sections.length)} title="As entered" id="entered">
        <Entered document={document} />
      </View>
    </>
  );
}
