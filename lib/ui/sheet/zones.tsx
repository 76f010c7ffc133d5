// Zone marks of the sheet (ISO 5457): figures along the top and bottom, letters down the sides.
const columns = ['1', '2', '3', '4', '5', '6'];
const rows = ['A', 'B', 'C', 'D'];

/** The four strips of zone marks; decoration, hidden from the ear and on narrow screens. */
export function Zones() {
  return (
    <>
      <Strip side="top" marks={columns} />
      <Strip side="bottom" marks={columns} />
      <Strip side="left" marks={rows} />
      <Strip side="right" marks={rows} />
    </>
  );
}

function Strip({ side, marks }: { readonly side: string; readonly marks: readonly string[] }) {
  const spans = marks.map((mark) => `<span>${mark}</span>`).join('');
  return (
    <div
      className={`sheet-zones sheet-zones-${side}`}
      aria-hidden="true"
      // As text: every page would otherwise carry and compare a score of elements that never change.
      // biome-ignore lint/security/noDangerouslySetInnerHtml: made of the constants above
      dangerouslySetInnerHTML={{ __html: spans }}
    />
  );
}
