// Remarks are written in Markdown by members: shown without raw HTML, scripts, pictures, ids or style attributes.
import type { ReactNode } from 'react';
import ReactMarkdown, { type Components } from 'react-markdown';
import rehypeSanitize, { defaultSchema } from 'rehype-sanitize';
import remarkGfm from 'remark-gfm';

// Ids are dropped: two remarks may each carry a footnote 1.
const schema = {
  ...defaultSchema,
  tagNames:
    defaultSchema.tagNames?.filter((name) => name !== 'img' && name !== 'picture' && name !== 'source') ?? [],
  attributes: {
    ...defaultSchema.attributes,
    '*': defaultSchema.attributes?.['*']?.filter((name) => name !== 'id') ?? [],
  },
};

const heading = ({ children }: { readonly children?: ReactNode }) => (
  <p className="prose-heading">{children}</p>
);

const components: Components = {
  a: ({ href, children }) => (
    <a href={href} rel="nofollow noopener noreferrer">
      {children}
    </a>
  ),
  // A remark's headings must not disturb the outline of the sheet.
  h1: heading,
  h2: heading,
  h3: heading,
  h4: heading,
  h5: heading,
  h6: heading,
  // Alignment would come as a style attribute, which the policy refuses.
  th: ({ children }) => <th scope="col">{children}</th>,
  td: ({ children }) => <td>{children}</td>,
  table: ({ children }) => (
    // biome-ignore lint/a11y/useSemanticElements: neither a fieldset nor a landmark
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region must be reachable by keyboard
    <div className="table-scroll" role="group" aria-label="Table in a remark" tabIndex={0}>
      <table>{children}</table>
    </div>
  ),
  input: ({ checked }) => (checked === true ? '[x] ' : '[ ] '),
};

/** Markdown as safe markup. */
export function Markdown({ text }: { readonly text: string }) {
  return <div className="prose">{read(text)}</div>;
}

/** Remarks are never rewritten, and reading one takes longer than all else about it: what was read lately is kept. */
const lately = new Map<string, ReactNode>();
const most = 200;

function read(text: string): ReactNode {
  const known = lately.get(text);
  if (known !== undefined) return known;
  const [oldest] = lately.keys();
  if (oldest !== undefined && lately.size >= most) lately.delete(oldest);
  // Called and not rendered: it has no state, and what it gives can stand in any number of pages.
  const content = ReactMarkdown({
    children: text,
    components,
    remarkPlugins: [remarkGfm],
    rehypePlugins: [[rehypeSanitize, schema]],
  });
  lately.set(text, content);
  return content;
}
