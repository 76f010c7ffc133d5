// Findings that the changes raised, cleared or reworded.
import type { Comparison } from '@/lib/compare/comparison';
import { FindingList } from '../findings/finding-list';
import { airy } from '../marks/airy';

/** Raised first; cleared ones are struck. */
export function FindingChanges({
  raised,
  cleared,
  restated,
}: Pick<Comparison, 'raised' | 'cleared' | 'restated'>) {
  if (raised.length + cleared.length + restated.length === 0) return <p>The findings are the same.</p>;
  return (
    <div className="finding-changes">
      {raised.length === 0 ? null : (
        <section>
          <h3 className="label">Raised ({raised.length})</h3>
          <FindingList findings={raised} />
        </section>
      )}
      {restated.length === 0 ? null : (
        <section>
          <h3 className="label">Still there, with other numbers ({restated.length})</h3>
          <FindingList
            findings={restated.map((r) => r.after)}
            under={(f) => (
              <p className="hush">
                Before: {airy(restated.find((r) => r.after.key === f.key)?.before.text ?? '')}
              </p>
            )}
          />
        </section>
      )}
      {cleared.length === 0 ? null : (
        <section>
          <h3 className="label">Cleared ({cleared.length})</h3>
          <ul className="cleared">
            {cleared.map((f) => (
              <li key={f.key}>
                <span className="finding-class">{f.class}</span> <del>{airy(f.text)}</del>
              </li>
            ))}
          </ul>
        </section>
      )}
    </div>
  );
}
