// Markup that is made once and kept: it is what React would render, and other facts never get it.
import { renderToStaticMarkup } from 'react-dom/server';
import { beforeEach, expect, it, vi } from 'vitest';
import { markupOf } from '@/app/_parts/unchanging/kept-markup';
import { plainLetters } from '@/app/_parts/unchanging/made-once';
import { Unchanging } from '@/app/_parts/unchanging/unchanging';
import { SectionViews, WeakestLink } from '@/app/designs/[number]/[letter]/_parts/worked-views';
import { assess } from '@/lib/assess/assess';
import { starters } from '@/lib/design/starters/registry';

const browser = vi.hoisted(() => ({ accept: 'text/html' }));
vi.mock('next/headers', () => ({ headers: async () => new Headers(browser) }));

const { document } = starters.lifter;
const worked = {
  number: 'QS-001',
  revision: { letter: 'A', document },
  assessment: assess(document),
  changed: null,
};
const pin = { number: 7, state: 'open' as const, at: 'duty.peakTorque', href: '#thread-7' };

/** What a page gets for these facts: the id, and the markup in the data or only kept for the HTML. */
async function part(from: readonly unknown[], children: React.ReactElement) {
  const { props } = await Unchanging({ from, children });
  return props as { readonly id: string; readonly markup: string | null };
}

beforeEach(() => {
  browser.accept = 'text/html';
});

it('is what React renders, the first time and when it is kept', async () => {
  const views = [
    <WeakestLink key="a" {...worked} />,
    <SectionViews key="b" {...worked} pins={[pin]} inFull={undefined} />,
  ];
  for (const [i, view] of views.entries()) {
    const direct = plainLetters(renderToStaticMarkup(view));
    expect(direct.length).toBeGreaterThan(10_000);
    for (const _ of ['made', 'kept']) {
      const { id } = await part(['equal', i], view);
      expect(markupOf(id)).toBe(direct);
    }
  }
});

it('is not made again for the same facts', async () => {
  const Counted = vi.fn(() => <p>once</p>);
  for (const _ of [1, 2, 3]) await part(['counted'], <Counted />);
  expect(Counted).toHaveBeenCalledTimes(1);
});

it('is made anew when a remark comes, is resolved, or a number changes', async () => {
  const views = [[], [pin], [{ ...pin, state: 'resolved' as const }]].map((pins) => ({
    from: ['sections', pins],
    view: <SectionViews {...worked} pins={pins} inFull={undefined} />,
  }));
  const other = starters.vane.document;
  const of = { ...worked, revision: { letter: 'A', document: other }, assessment: assess(other) };
  views.push({
    from: ['sections', [], 'other'],
    view: <SectionViews {...of} pins={[]} inFull={undefined} />,
  });
  const made = [];
  for (const { from, view } of views) made.push(markupOf((await part(from, view)).id));
  expect(new Set(made).size).toBe(views.length);
  expect(made[1]).toContain('Thread 7, open');
  expect(made[2]).toContain('Thread 7, resolved');
  expect(made[0]).not.toContain('Thread 7');
});

it('comes in the HTML of a page that is opened, and in the data of one that script brings in', async () => {
  const opened = await part(['place'], <p>here</p>);
  expect(opened.markup).toBeNull();
  expect(markupOf(opened.id)).toBe('<p>here</p>');
  browser.accept = '*/*';
  expect((await part(['place'], <p>here</p>)).markup).toBe('<p>here</p>');
});

it('writes letters beyond ASCII as numbers that a browser reads back', () => {
  expect(plainLetters('<td title="σ">61 N·m 🔩</td>')).toBe('<td title="&#963;">61 N&#183;m &#128297;</td>');
});
