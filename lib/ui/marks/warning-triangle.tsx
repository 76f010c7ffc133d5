// The warning triangle, drawn in ink; the word beside it carries the meaning.

/** Decorative: always set beside words. */
export function WarningTriangle() {
  return (
    <svg className="warning-triangle" viewBox="0 0 26 24" aria-hidden="true" focusable="false">
      <path d="M13 2 L24.4 22 H1.6 Z" />
      <path d="M13 8.6 V15.4" />
      <circle cx="13" cy="18.6" r="1.25" />
    </svg>
  );
}
