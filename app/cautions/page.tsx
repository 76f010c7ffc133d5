// The cautions in one place, for whoever stands at a bench: it reads nothing and asks for no account. The bench measures
// the other pages against it, as a page that costs only what every page costs.
import type { Metadata } from 'next';
import { Caution } from '@/lib/ui/notices/caution';
import { PlainTitle } from '@/lib/ui/sheet/plain-title';
import { Sheet } from '@/lib/ui/sheet/sheet';

export const metadata: Metadata = { title: 'Cautions' };

export default function CautionsPage() {
  return (
    <Sheet title={<PlainTitle over="Pawl" title="Cautions" />}>
      <Caution grade="danger" title="Before power">
        <p>
          Hold the rig down, keep everyone out of the arm’s reach, and have a stop that cuts the power within
          reach of a hand. An arm or a rotor that was released goes on moving; gears pinch.
        </p>
      </Caution>
      <Caution grade="danger" title="Lithium packs">
        <p>
          Charge and keep them where a fire can burn out, never alone, and never a damaged one. Their short
          circuit melts leads: fuse close to the pack.
        </p>
      </Caution>
      <Caution grade="warning" title="What a sheet cannot tell">
        <p>
          Numbers follow from what was entered and from published methods; prints scatter, creep and age. A
          factor is no proof and a signature is no legal certificate. Local rules and competent persons come
          first.
        </p>
      </Caution>
      <p>
        <a href="/">To the shelf</a>
      </p>
    </Sheet>
  );
}
