// Drafts and revisions when several people are at work at once.
import { beforeAll, describe, expect, it } from 'vitest';
import { letterOf } from '@/lib/review/letters';
import { newDesign } from '@/lib/service/designs/new-design';
import { openDraft } from '@/lib/service/drafts/open-draft';
import { saveDraft } from '@/lib/service/drafts/save-draft';
import { replaceDraftFromRevision } from '@/lib/service/drafts/start-anew';
import { publish } from '@/lib/service/publishing/publish';
import { reviseAssessment } from '@/lib/service/publishing/revise-assessment';
import { compareRevisions } from '@/lib/service/sheets/compare-revisions';
import { revisionSheet } from '@/lib/service/sheets/revision-sheet';
import { type Cast, cast, codeOf, must } from './cast';
import { nextRevision, published } from './story';

let people: Cast;
beforeAll(async () => {
  people = await cast('QS');
});

const setTitle = (text: string) => [{ do: 'set' as const, path: 'duty.peakTorque', text }];

async function fresh(): Promise<string> {
  return must(await newDesign(people.author, { club: 'QS', starter: 'turntable', title: 'Table' })).number;
}

describe('design numbers', () => {
  it('are dense within a club when many designs begin at once', async () => {
    const before = Number((await fresh()).slice(3));
    const numbers = await Promise.all(Array.from({ length: 12 }, fresh));
    const places = numbers.map((n) => Number(n.slice(3))).sort((a, b) => a - b);
    expect(places).toEqual(Array.from({ length: 12 }, (_, i) => before + 1 + i));
  });
});

describe('publishing', () => {
  it('gives dense letters to twenty who publish at the same time', async () => {
    const design = await fresh();
    const once = async (i: number): Promise<string> => {
      for (;;) {
        const { version } = must(await openDraft(people.author, { design }));
        const edits = setTitle(String(2 + i / 10));
        const saved = await saveDraft(people.author, { design, baseVersion: version, edits });
        if (!saved.ok) continue;
        const note = { design, baseVersion: saved.value.version, changeNote: `Change ${i}.` };
        const result = await publish(people.author, note);
        if (result.ok) return result.value.letter;
        // Overtaken by another's save: take up the draft anew.
        expect(result.error.code).toBe('draft.stale');
      }
    };
    const letters = await Promise.all(Array.from({ length: 20 }, (_, i) => once(i)));
    const expected = Array.from({ length: 20 }, (_, i) => letterOf(i + 1));
    expect(letters.sort()).toEqual(expected.sort());
    const sheet = must(await revisionSheet(people.guest, { design }));
    expect(sheet.revisions.map((r) => r.letter)).toEqual(
      Array.from({ length: 20 }, (_, i) => letterOf(20 - i)),
    );
  }, 60_000);

  it('happens once when the same draft is published twenty times at once', async () => {
    const design = await fresh();
    const tries = Array.from({ length: 20 }, () =>
      publish(people.author, { design, baseVersion: 1, changeNote: 'First.' }),
    );
    const results = await Promise.all(tries);
    expect(results.filter((r) => r.ok)).toHaveLength(1);
    for (const r of results) if (!r.ok) expect(r.error.code).toBe('publish.unchanged');
  });

  it('is refused while typed text waits, with the sentence for each field', async () => {
    const design = await fresh();
    const saved = must(await saveDraft(people.author, { design, baseVersion: 1, edits: setTitle('five') }));
    expect(saved.outcomes[0]).not.toBeNull();
    const result = await publish(people.author, {
      design,
      baseVersion: 2,
      changeNote: 'With a typing error.',
    });
    expect(codeOf(result)).toBe('publish.pending');
    expect(!result.ok && result.error.fields?.['duty.peakTorque']).toBe(saved.problems['duty.peakTorque']);
  });

  it('is refused without a change note', async () => {
    const result = await publish(people.author, { design: await fresh(), baseVersion: 1, changeNote: '  ' });
    expect(codeOf(result)).toBe('input.invalid');
    expect(!result.ok && Object.keys(result.error.fields ?? {})).toEqual(['changeNote']);
  });

  it('keeps document, hashes and assessment together', async () => {
    const design = await published(people.author, 'QS', 'lifter');
    const { hashOf } = await import('@/lib/design/canonical');
    const sheet = must(await revisionSheet(people.guest, { design, letter: 'A' }));
    expect(hashOf(sheet.revision.document)).toBe(sheet.revision.documentHash);
    expect(hashOf(sheet.assessment)).toBe(sheet.shown.hash);
    expect(sheet.standing.key).toBe('underReview');
    expect(sheet.assessment.sheet.length).toBeGreaterThan(10);
  });

  it('assesses a revision once by each method', async () => {
    const design = await published(people.author, 'QS');
    expect(codeOf(await reviseAssessment(people.author, { design, letter: 'A' }))).toBe('assessment.current');
    expect(codeOf(await reviseAssessment(people.author, { design, letter: 'B' }))).toBe('revision.notFound');
  });
});

describe('a draft', () => {
  it('saved on an older version is refused, with the draft as it stands and who saved it', async () => {
    const design = await fresh();
    must(await saveDraft(people.member, { design, baseVersion: 1, edits: setTitle('5') }));
    const late = await saveDraft(people.author, { design, baseVersion: 1, edits: setTitle('6') });
    expect(codeOf(late)).toBe('draft.stale');
    const now = must(await openDraft(people.author, { design }));
    expect(!late.ok && late.error.detail).toMatchObject({
      version: 2,
      updatedBy: { userId: people.member.userId, name: 'Mo Member' },
      content: now.content,
    });
    expect(now.content.document.duty.peakTorque).toBe(5);
  });

  it('loses nothing when two save at once: one wins, the other is told and puts its edit on top', async () => {
    const design = await fresh();
    const edit = (path: string, text: string) => [{ do: 'set' as const, path, text }];
    const results = await Promise.all([
      saveDraft(people.author, { design, baseVersion: 1, edits: edit('duty.peakTorque', '7') }),
      saveDraft(people.member, { design, baseVersion: 1, edits: edit('duty.ambient', '31') }),
    ]);
    expect(results.map((r) => (r.ok ? 'saved' : r.error.code)).sort()).toEqual(['draft.stale', 'saved']);
    const [first] = results;
    const again = first?.ok ? edit('duty.ambient', '31') : edit('duty.peakTorque', '7');
    const person = first?.ok ? people.member : people.author;
    must(await saveDraft(person, { design, baseVersion: 2, edits: again }));
    const { content } = must(await openDraft(people.author, { design }));
    expect(content.document.duty).toMatchObject({ peakTorque: 7, ambient: 31 });
  });

  it('keeps text that does not fit, word for word', async () => {
    const design = await fresh();
    must(await saveDraft(people.author, { design, baseVersion: 1, edits: setTitle('about 4 “N·m” 🔧') }));
    const { content } = must(await openDraft(people.author, { design }));
    expect(content.pending['duty.peakTorque']).toBe('about 4 “N·m” 🔧');
    expect(content.document.duty.peakTorque).toBe(4);
  });

  it('with a null character or half a surrogate pair is refused as input, not as a fault', async () => {
    const design = await fresh();
    for (const text of ['4\u0000', '4\ud800'])
      expect(codeOf(await saveDraft(people.author, { design, baseVersion: 1, edits: setTitle(text) }))).toBe(
        'input.invalid',
      );
  });

  it('starts anew from a revision only on purpose and on the version it was seen in', async () => {
    const design = await published(people.author, 'QS');
    must(await saveDraft(people.author, { design, baseVersion: 1, edits: setTitle('9') }));
    const anew = (baseVersion: number, letter: string) =>
      replaceDraftFromRevision(people.author, { design, baseVersion, letter });
    expect(codeOf(await anew(1, 'A'))).toBe('draft.stale');
    expect(codeOf(await anew(2, 'B'))).toBe('revision.notFound');
    expect(must(await anew(2, 'A')).content.document.duty.peakTorque).toBe(4);
    expect(must(await openDraft(people.author, { design })).ahead).toBe(false);
  });

  it('warns a reviewer that whoever edits can no longer sign, and not the author', async () => {
    const design = await fresh();
    expect(must(await openDraft(people.officer, { design })).warning).toContain('no longer sign');
    expect(must(await openDraft(people.author, { design })).warning).toBeNull();
  });
});

describe('a comparison', () => {
  it('shows the changed field between two revisions, and between a revision and the draft', async () => {
    const design = await published(people.author, 'QS');
    const letter = await nextRevision(people.author, design, 'duty.peakTorque', '6');
    const two = must(await compareRevisions(people.guest, { design, before: 'A', after: letter }));
    expect(two.comparison.fields.map((f) => f.path)).toEqual(['duty.peakTorque']);
    expect(two.sameMethod).toBe(true);
    const draft = must(await compareRevisions(people.member, { design, before: 'A', after: 'draft' }));
    expect(draft.comparison.fields).toEqual(two.comparison.fields);
    expect(codeOf(await compareRevisions(people.guest, { design, before: 'A', after: 'draft' }))).toBe(
      'viewer.role',
    );
  });
});
