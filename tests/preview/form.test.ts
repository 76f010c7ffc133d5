// A form without script sends back the texts it was opened with; only what its sender changed becomes an edit.
import { describe, expect, it } from 'vitest';
import { applyEdit, type DraftContent } from '@/lib/design/edit';
import { starters } from '@/lib/design/starters/registry';
import { editsOfForm, textsOf, withEdits } from '@/lib/preview/rows';

const content: DraftContent = { document: starters.turntable.document, pending: {} };

function posted(changes: Readonly<Record<string, string>>): Map<string, string> {
  return new Map(Object.entries({ ...textsOf(content), ...changes }));
}

describe('a form sent without script', () => {
  it('makes no edit when nothing was typed', () => {
    expect(editsOfForm(textsOf(content), posted({}))).toEqual([]);
  });

  it('makes one edit a changed field, and none of what others saved since it was opened', () => {
    const edits = editsOfForm(textsOf(content), posted({ 'duty.peakTorque': '3.5 N m' }));
    expect(edits).toEqual([{ do: 'set', path: 'duty.peakTorque', text: '3.5 N m' }]);
    const theirs = applyEdit(content, { do: 'set', path: 'duty.ambient', text: '30' }).content;
    const both = withEdits(theirs, edits).document.duty;
    expect([both.peakTorque, both.ambient]).toEqual([3.5, 30]);
  });

  it('is deaf to names that it was not opened with', () => {
    expect(editsOfForm(textsOf(content), posted({ 'club.role': 'steward' }))).toEqual([]);
  });

  it('keeps text that does not fit beside the document', () => {
    const edits = editsOfForm(textsOf(content), posted({ 'duty.ambient': 'warm' }));
    const after = withEdits(content, edits);
    expect(after.pending).toEqual({ 'duty.ambient': 'warm' });
    expect(textsOf(after)['duty.ambient']).toBe('warm');
  });
});
