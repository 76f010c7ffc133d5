// The revision triangle of ASME Y14.35: a triangle with the letter of the revision that made the change.

/** Triangle with a revision letter; `what` is read aloud, e.g. `changed in revision C`. */
export function RevisionTriangle({
  letter,
  what,
}: {
  readonly letter: string;
  readonly what?: string | undefined;
}) {
  return (
    <svg
      className="revision-triangle"
      viewBox="0 0 24 22"
      role="img"
      aria-label={what ?? `changed in revision ${letter}`}
    >
      <path d="M12 1.6 L22.6 20.6 H1.4 Z" />
      <text x="12" y="18">
        {letter}
      </text>
    </svg>
  );
}
