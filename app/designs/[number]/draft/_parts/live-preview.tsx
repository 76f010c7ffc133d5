'use client';
// What the draft comes to as it is typed, worked in the browser. Publishing has the server work it again.
import type { Preview } from '@/lib/preview/use-preview';
import { FindingList } from '@/lib/ui/findings/finding-list';
import { Ladder } from '@/lib/ui/ladder/ladder';
import { Failure } from '@/lib/ui/notices/notice';
import { HeadlineSentence } from '@/lib/ui/sheet/headline-sentence';
import { MarginBlock } from '@/lib/ui/sheet/margin-block';

export function LivePreview({ preview }: { readonly preview: Preview }) {
  const { headline, checks, findings } = preview.assessment;
  const weakest = checks.find((c) => c.key === headline.weakest);
  return (
    <div className="live-preview" aria-busy={preview.stale}>
      {preview.failed === null ? null : <Failure title="No preview.">{preview.failed}</Failure>}
      <MarginBlock title="What holds, while you type" id="preview">
        <HeadlineSentence headline={headline} label={weakest?.label ?? null} mode={weakest?.mode ?? null} />
        <Ladder checks={checks} headline={headline} />
      </MarginBlock>
      <MarginBlock title="Findings">
        <FindingList findings={findings} />
      </MarginBlock>
    </div>
  );
}
