// The demo does only what the service allows; a refusal means that the demo itself is at fault.
import type { Result } from '@/lib/service/result';

/** The value of a result, or an error that names what was refused and why. */
export async function taken<T>(what: string, asked: Promise<Result<T>>): Promise<T> {
  const result = await asked;
  if (result.ok) return result.value;
  throw new Error(`The demo club: ${what} was refused. ${JSON.stringify(result.error)}`);
}
