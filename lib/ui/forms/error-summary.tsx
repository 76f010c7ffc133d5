// Errors of a form in one place above it, each leading to its field.
import { fieldId } from './field-frame';

interface ErrorSummaryProps {
  readonly errors: readonly { readonly name: string; readonly text: string }[];
  /** Defaults to the number of things to mend. */
  readonly title?: string | undefined;
}

/** Nothing when there are no errors. */
export function ErrorSummary({ errors, title }: ErrorSummaryProps) {
  if (errors.length === 0) return null;
  const things = errors.length === 1 ? 'One thing needs mending.' : `${errors.length} things need mending.`;
  return (
    <div className="notice" data-kind="failure" role="alert">
      <strong>{title ?? things}</strong>
      <ul className="error-list">
        {errors.map((e) => (
          <li key={`${e.name}:${e.text}`}>
            <a href={`#${fieldId(e.name)}`}>{e.text}</a>
          </li>
        ))}
      </ul>
    </div>
  );
}
