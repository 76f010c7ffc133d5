// The materials: every value with its range, source, and how well founded it is.
import type { Metadata } from 'next';
import Link from 'next/link';
import { addresses } from '@/app/_parts/addresses';
import { PageFrame } from '@/app/_parts/page-frame';
import { handbook } from '@/lib/service/handbook/handbook';
import { BasisTable } from '@/lib/ui/handbook/basis-table';
import { MaterialTable } from '@/lib/ui/handbook/material-table';
import { Caution } from '@/lib/ui/notices/caution';
import { MarginBlock } from '@/lib/ui/sheet/margin-block';
import { PlainTitle } from '@/lib/ui/sheet/plain-title';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { View } from '@/lib/ui/sheet/view';

export const metadata: Metadata = { title: 'Materials' };

export default function MaterialsPage() {
  const { materials, bases } = handbook();
  const values = materials.reduce((sum, m) => sum + m.rows.length, 0);
  return (
    <PageFrame current="handbook">
      <Sheet
        title={
          <PlainTitle
            over="Handbook"
            title="Materials and their sources"
            cells={[
              { label: 'Materials', content: String(materials.length) },
              { label: 'Values', content: String(values) },
              { label: 'Formulas', content: <Link href={addresses.handbook}>in the handbook</Link> },
            ]}
          />
        }
        marginLabel="Contents"
        margin={
          <>
            <MarginBlock title="How to read them">
              <a href="#basis">Basis and range</a>
            </MarginBlock>
            <MarginBlock title="Materials">
              <ul className="plain-list">
                {materials.map((m) => (
                  <li key={m.key}>
                    <a href={`#material-${m.key}`}>{m.name}</a>
                  </li>
                ))}
              </ul>
            </MarginBlock>
            <Caution>
              <p>
                About two thirds of these values are judgement or from memory and say so. Prints scatter: test
                coupons of your own spool.
              </p>
            </Caution>
          </>
        }
      >
        <View letter="A" title="Material data: basis and range" id="basis">
          <BasisTable bases={bases} />
        </View>
        {materials.map((m) => (
          <details key={m.key} className="material fold">
            <summary>
              <h2>{m.name}</h2> <span className="hush">{m.rows.length} values</span>
            </summary>
            {/* Inside the fold, so that a link to it opens it. */}
            <div id={`material-${m.key}`}>
              <MaterialTable caption={m.name} rows={m.rows} />
            </div>
          </details>
        ))}
      </Sheet>
    </PageFrame>
  );
}
