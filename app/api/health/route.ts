// Whether the service and its database are well; asked by the start, by tests and by whoever watches over a server.
import { versions } from '@/lib/service/about';
import { health } from '@/lib/service/ledger/health';

export const dynamic = 'force-dynamic';

export async function GET(): Promise<Response> {
  const { database, milliseconds } = await health();
  const well = database === 'answers';
  return Response.json(
    {
      status: well ? 'ok' : 'database silent',
      database,
      milliseconds,
      version: versions.service,
      method: versions.method,
    },
    { status: well ? 200 : 503, headers: { 'cache-control': 'no-store' } },
  );
}
