// Every starter is a document that the service would take from a member.
import { describe, expect, it } from 'vitest';
import { openDocument } from '@/lib/design/open';
import { starterKeys, starters } from '@/lib/design/starters/registry';

describe.each(starterKeys)('the starter %s', (key) => {
  const { document, title, summary } = starters[key];

  it('is accepted as it stands and comes back unchanged', () => {
    expect(openDocument(structuredClone(document))).toEqual({ ok: true, document });
  });

  it('has a title, and a summary that names its torque', () => {
    expect(title).not.toBe('');
    expect(summary).toContain(`${document.duty.peakTorque} N·m`);
  });
});
