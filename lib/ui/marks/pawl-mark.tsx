// The service's own mark: a ratchet wheel held by its pawl, drawn as a draughtsman would.

/** Decorative mark beside the name. */
export function PawlMark() {
  return (
    <svg width="26" height="26" viewBox="0 0 32 32" aria-hidden="true" focusable="false">
      <path
        d={ratchet(12.5, 20, 10.4, 7.4, 10)}
        fill="none"
        stroke="currentColor"
        strokeWidth="1.7"
        strokeLinejoin="miter"
      />
      <circle cx="12.5" cy="20" r="2" fill="currentColor" />
      <path d="M27.6 5.2 L20.9 14.2 L18.2 10.6 L24.8 3.2 Z" fill="currentColor" />
      <circle cx="26.6" cy="4.4" r="3" fill="none" stroke="currentColor" strokeWidth="1.7" />
    </svg>
  );
}

function ratchet(x: number, y: number, tip: number, root: number, teeth: number): string {
  const at = (r: number, turn: number) => {
    const a = turn * 2 * Math.PI - 0.9;
    return `${(x + r * Math.cos(a)).toFixed(2)} ${(y + r * Math.sin(a)).toFixed(2)}`;
  };
  const points = Array.from({ length: teeth }, (_, i) => `L${at(tip, i / teeth)} L${at(root, i / teeth)}`);
  return `${points.join(' ').replace('L', 'M')} Z`;
}
