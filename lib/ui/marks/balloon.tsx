// A numbered balloon of a remark: a heavy ring while open, thin and struck when resolved.

interface BalloonProps {
  readonly number: number;
  readonly state: 'open' | 'resolved';
  /** Where it leads, e.g. `#thread-2`; without it the balloon is plain. */
  readonly href?: string | undefined;
}

/** Numbered balloon; read aloud as `Thread 2, open`. */
export function Balloon({ number, state, href }: BalloonProps) {
  const wide = number > 99 ? true : undefined;
  const words = `Thread ${number}, ${state}`;
  if (href === undefined) {
    return (
      <span className="balloon" data-state={state} data-wide={wide}>
        <span aria-hidden="true">{number}</span>
        <span className="for-ear">{words}</span>
      </span>
    );
  }
  return (
    <a className="balloon" data-state={state} data-wide={wide} href={href} aria-label={words}>
      {number}
    </a>
  );
}
