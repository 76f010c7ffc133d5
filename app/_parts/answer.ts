// From what a use case answers to what a form shows.
import 'server-only';
import { tell } from '@/lib/service/failures';
import type { Failure } from '@/lib/service/result';

/** What a form shows after it was sent and could not be taken; typed values are given back so that nothing is lost. */
export interface FormState {
  readonly failure?: string;
  readonly done?: string;
  readonly fields?: Readonly<Record<string, string>>;
  readonly values?: Readonly<Record<string, string>>;
}

/** A refusal as the form shows it. */
export function formState(failure: Failure, form: FormData): FormState {
  return { failure: tell(failure).sentence, fields: failure.fields ?? {}, values: textsOf(form) };
}

/** The text of one form entry; files and missing entries read as empty. */
export function text(form: FormData, name: string): string {
  const value = form.get(name);
  return typeof value === 'string' ? value : '';
}

function textsOf(form: FormData): Record<string, string> {
  const texts: Record<string, string> = {};
  for (const [name, value] of form) {
    // Never hand a password back to a page.
    if (typeof value === 'string' && !name.startsWith('$') && !/password/i.test(name)) texts[name] = value;
  }
  return texts;
}
