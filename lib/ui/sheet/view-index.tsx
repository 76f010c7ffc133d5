// The views of a long sheet in one line, each with its letter: the way to any of them without scrolling.

interface ViewIndexProps {
  /** In their order; a letter of null is a block of the margin. */
  readonly views: readonly { readonly letter: string | null; readonly title: string; readonly id: string }[];
}

/** Links to the views of the sheet. */
export function ViewIndex({ views }: ViewIndexProps) {
  return (
    <nav className="view-index" aria-label="On this sheet">
      <ul>
        {views.map((v) => (
          <li key={v.id}>
            <a href={`#${v.id}`}>
              {v.letter === null ? null : <b>{v.letter}</b>} {v.title}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
