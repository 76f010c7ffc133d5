// Threads of remarks: states in words, forms given by the page, and Markdown that can do no harm.
import { describe, expect, it } from 'vitest';
import { Markdown } from '@/lib/ui/threads/markdown';
import { Thread } from '@/lib/ui/threads/thread';
import { ThreadList } from '@/lib/ui/threads/thread-list';
import type { ThreadView } from '@/lib/ui/threads/thread-view';
import { markup, words } from './render';

const open: ThreadView = {
  number: 2,
  state: 'open',
  where: 'Stage 3, face width',
  revision: 'C',
  resolution: null,
  remarks: [
    { id: 'a', author: 'Moss', at: '2026-11-22T08:00:00Z', body: '22 mm will **not** do.\n\nMore.' },
    { id: 'b', author: 'Wren', at: '2026-11-22T09:30:00Z', body: 'Agreed.' },
  ],
};
const resolved: ThreadView = {
  ...open,
  number: 1,
  state: 'resolved',
  resolution: 'Resolved by Moss in revision D.',
};

describe('a thread', () => {
  it('gives author and time of every remark in text, in UTC', () => {
    const text = words(<Thread thread={open} />);
    expect(text).toContain('Moss , 2026-11-22 08:00 UTC');
    expect(text).toContain('Wren , 2026-11-22 09:30 UTC');
  });

  it('says its state and number in words', () => {
    expect(words(<Thread thread={open} />)).toContain('Thread 2, open');
    expect(words(<Thread thread={resolved} />)).toContain('Resolved by Moss in revision D.');
  });

  it('holds the forms that the page gives it', () => {
    expect(markup(<Thread thread={open}>reply form</Thread>)).toContain(
      '<div class="thread-forms">reply form</div>',
    );
  });
});

describe('the list of threads', () => {
  it('puts open ones first and leads to each', () => {
    const html = markup(<ThreadList threads={[resolved, open]} href="/d/C/threads" />);
    expect(html.indexOf('Thread 2, open')).toBeLessThan(html.indexOf('Thread 1, resolved'));
    expect(html).toContain('href="/d/C/threads#thread-2"');
  });

  it('shows the first line without Markdown signs, and counts replies', () => {
    const text = words(<ThreadList threads={[open]} href="/t" />);
    expect(text).toContain('22 mm will not do.');
    expect(text).toContain('1 reply');
    expect(text).not.toContain('More.');
  });
});

describe('Markdown of a remark', () => {
  it.each([
    ['<script>alert(1)</script>', /<script/],
    ['[x](javascript:alert(1))', /javascript:/],
    ['<img src=x onerror=alert(1)>', /<img|onerror/],
    ['![x](http://example.org/x.png)', /<img/],
    ['<p style="color:red" id="content">x</p>', /style=|id="content"/],
    ['| a |\n|--:|\n| 1 |', /style=/],
    ['a[^1]\n\n[^1]: note', /\sid=/],
    ['- [x] done', /<input/],
    ['# Heading', /<h1/],
  ])('%s leaves nothing harmful or disturbing behind', (text, forbidden) => {
    expect(markup(<Markdown text={text} />)).not.toMatch(forbidden);
  });

  it('keeps emphasis, lists, tables with scope, and links that say nothing of the reader', () => {
    const html = markup(<Markdown text={'**b** [ok](https://example.org)\n\n- x\n\n| a |\n|---|\n| 1 |'} />);
    expect(html).toContain('<strong>b</strong>');
    expect(html).toContain('<a href="https://example.org" rel="nofollow noopener noreferrer">');
    expect(html).toContain('<li>x</li>');
    expect(html).toContain('<th scope="col">a</th>');
  });
});
