// The draft in the browser loses nothing that is typed, whatever the connection and the others do.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyEdit, type DraftContent, type Edit, takeText } from '@/lib/design/edit';
import { leafAt, valueAt } from '@/lib/design/path';
import { starters } from '@/lib/design/starters/registry';
import {
  currentContent,
  openQueue,
  type QueueEvent,
  type QueueState,
  readyToSend,
  step,
  unconfirmed,
} from '@/lib/preview/queue';

const seed = 20261;
const start: DraftContent = { document: starters.turntable.document, pending: {} };
const paths = ['duty.peakTorque', 'duty.holdTorque', 'motor.mass', 'rig.held', 'supply.fuse'];
const anEdit: fc.Arbitrary<Edit> = fc.record({
  do: fc.constant('set' as const),
  path: fc.constantFrom(...paths),
  text: fc.constantFrom('12', '3.5 N m', 'twelve', '', '7', 'clamps', '1e9'),
});

const set = (path: string, text: string): Edit => ({ do: 'set', path, text });
const play = (events: readonly QueueEvent[], from = openQueue(3, start)) =>
  events.reduce<QueueState>(step, from);

describe('the queue of a draft', () => {
  it('shows every keystroke at once, before anything is saved', () => {
    const state = play([{ on: 'edited', edit: set('duty.peakTorque', '17') }]);
    expect(currentContent(state).document.duty.peakTorque).toBe(17);
    expect(state.saved).toBe(start);
  });

  it('sends typing in one field as one edit', () => {
    const state = play(
      ['1', '17', '17 N m'].map((text) => ({ on: 'edited', edit: set('duty.peakTorque', text) })),
    );
    expect(state.unsent).toEqual([set('duty.peakTorque', '17 N m')]);
  });

  it('keeps what was on its way and what was typed meanwhile when the connection fails, oldest first', () => {
    const state = play([
      { on: 'edited', edit: set('duty.peakTorque', '17') },
      { on: 'sent' },
      { on: 'edited', edit: set('motor.mass', '2') },
      { on: 'failed' },
    ]);
    expect(state.offline).toBe(true);
    expect(unconfirmed(state)).toEqual([set('duty.peakTorque', '17'), set('motor.mass', '2')]);
    expect(readyToSend(state)).toBe(true);
  });

  it('stops sending when someone else saved first, and puts mine on top of theirs when I say so', () => {
    const theirs = applyEdit(start, set('motor.mass', '4')).content;
    const clashed = play([
      { on: 'edited', edit: set('duty.peakTorque', '17') },
      { on: 'sent' },
      { on: 'clashed', clash: { by: 'Mira', at: '2026-11-20T10:00:00Z', version: 8, content: theirs } },
    ]);
    expect(readyToSend(clashed)).toBe(false);
    const mine = step(clashed, { on: 'keptMine' });
    expect(mine.version).toBe(8);
    expect(currentContent(mine).document.duty.peakTorque).toBe(17);
    expect(currentContent(mine).document.motor.mass).toBe(4);
    const yielded = step(clashed, { on: 'tookTheirs' });
    expect(currentContent(yielded)).toEqual(theirs);
  });

  it('loses nothing: whatever order edits, sends, failures and answers come in, each field shows what was typed last', () => {
    const anEvent = fc.oneof(
      { weight: 4, arbitrary: anEdit.map((edit): QueueEvent => ({ on: 'edited', edit })) },
      fc.constant<QueueEvent>({ on: 'sent' }),
      fc.constant<QueueEvent>({ on: 'failed' }),
      fc.constant<QueueEvent>({ on: 'accepted', version: 9 }),
    );
    fc.assert(
      fc.property(fc.array(anEvent, { maxLength: 40 }), (events) => {
        let state = openQueue(1, start);
        const typed = new Map<string, string>();
        for (const event of events) {
          if (event.on === 'accepted' && state.sending === null) continue;
          if (event.on === 'edited' && event.edit.do === 'set') typed.set(event.edit.path, event.edit.text);
          state = step(state, event);
        }
        const content = currentContent(state);
        for (const [path, text] of typed) {
          const field = leafAt(path);
          const taken = field === undefined ? undefined : takeText(text, field);
          if (taken?.ok === true) expect(valueAt(content.document, path)).toBe(taken.value);
          expect(content.pending[path]).toBe(taken?.ok === true ? undefined : text);
        }
      }),
      { seed, numRuns: 300 },
    );
  });
});
