'use client';
// Something went wrong on the server: a reference number and a way on, nothing of what went wrong.
import { Button } from '@/lib/ui/forms/button';
import { PlainTitle } from '@/lib/ui/sheet/plain-title';
import { Sheet } from '@/lib/ui/sheet/sheet';

export default function ErrorPage({
  error,
  reset,
}: {
  error: Error & { digest?: string };
  reset: () => void;
}) {
  return (
    <Sheet title={<PlainTitle over="Pawl" title="Something went wrong" />}>
      <p>Nothing was changed. Reference {error.digest ?? 'none'}; tell it to whoever runs this service.</p>
      <Button type="button" onClick={reset}>
        Try again
      </Button>
    </Sheet>
  );
}
