// The handbook: every formula with its inputs, units, validity and source, from the same values that compute.
import type { Metadata } from 'next';
import Link from 'next/link';
import { addresses } from '@/app/_parts/addresses';
import { PageFrame } from '@/app/_parts/page-frame';
import { type HandbookView, handbook } from '@/lib/service/handbook/handbook';
import { FormulaEntry } from '@/lib/ui/handbook/formula-entry';
import { Caution } from '@/lib/ui/notices/caution';
import { MarginBlock } from '@/lib/ui/sheet/margin-block';
import { PlainTitle } from '@/lib/ui/sheet/plain-title';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { View } from '@/lib/ui/sheet/view';
import { viewLetter } from '@/lib/ui/sheet/view-letter';
import { RuledTable } from '@/lib/ui/table/ruled-table';

export const metadata: Metadata = { title: 'Handbook' };

export default function HandbookPage() {
  const view = handbook();
  return (
    <PageFrame current="handbook">
      <Sheet title={<HandbookTitle view={view} />} marginLabel="Contents" margin={<Contents view={view} />}>
        <p>
          What is written here is what runs: each entry is the very value that computes, and a test proves
          that its text and its code agree and that its units come out.
        </p>
        {view.shelves.map((shelf, i) => (
          <View key={shelf.key} letter={viewLetter(i)} title={shelf.label} id={`shelf-${shelf.key}`}>
            {shelf.topics.map((topic) => (
              <details key={topic.key} className="fold" id={`topic-${shelf.key}-${topic.key}`}>
                <summary>
                  <h3>{topic.label}</h3> <span className="hush">{counted(topic.formulas.length)}</span>
                </summary>
                {topic.formulas.map((f) => (
                  <FormulaEntry key={f.key} formula={f} />
                ))}
              </details>
            ))}
          </View>
        ))}
        <View letter={viewLetter(view.shelves.length)} title="Rules" id="rules">
          <RuledTable
            caption="Rules that raise findings"
            columns={[{ label: 'Rule' }, { label: 'Class' }, { label: 'Why' }, { label: 'Source' }]}
            rows={view.rules.map((r) => ({
              key: r.key,
              id: `rule-${r.key}`,
              cells: [r.label, r.class, r.reason, r.source],
            }))}
          />
        </View>
      </Sheet>
    </PageFrame>
  );
}

function counted(formulas: number): string {
  return formulas === 1 ? '1 formula' : `${formulas} formulas`;
}

function HandbookTitle({ view }: { readonly view: HandbookView }) {
  const count = view.shelves.reduce((sum, s) => sum + s.formulas.length, 0);
  return (
    <PlainTitle
      over="Handbook"
      title="Formulas and their sources"
      cells={[
        { label: 'Method', content: view.method },
        { label: 'Formulas', content: String(count) },
        { label: 'Rules', content: <a href="#rules">{view.rules.length} with reasons</a> },
        {
          label: 'Materials',
          content: <Link href={addresses.materials}>{view.materials.length} with sources</Link>,
        },
      ]}
    />
  );
}

function Contents({ view }: { readonly view: HandbookView }) {
  return (
    <>
      <MarginBlock title="Formulas by name">
        {view.shelves.flatMap((shelf) =>
          shelf.topics.map((topic) => (
            <details key={`${shelf.key} ${topic.key}`}>
              <summary>
                {shelf.topics.length === 1 ? shelf.label : `${shelf.label}: ${inSentence(topic.label)}`} (
                {topic.formulas.length})
              </summary>
              <ul className="plain-list">
                {topic.formulas.map((f) => (
                  <li key={f.key}>
                    <a href={`#formula-${f.key}`}>{f.name}</a>
                  </li>
                ))}
              </ul>
            </details>
          )),
        )}
      </MarginBlock>
      <MarginBlock title="Method">
        <ul className="plain-list">
          {view.log.map((entry) => (
            <li key={entry.version}>
              {entry.version}, {entry.date}: {entry.moved}
            </li>
          ))}
        </ul>
      </MarginBlock>
      <Caution>
        <p>
          Standards are cited as they were remembered or read, and say which. For work that the law regulates,
          use the standard itself.
        </p>
      </Caution>
    </>
  );
}

function inSentence(label: string): string {
  return label.charAt(0).toLowerCase() + label.slice(1);
}
