'use client';
// Ties the queue to the browser: typing, saving after a short rest, the device's store, and the connection.
import { useCallback, useEffect, useMemo, useReducer, useRef, useState } from 'react';
import type { DraftContent, Edit } from '@/lib/design/edit';
import { keepEdits, keptEdits } from './keep';
import { currentContent, openQueue, type QueueState, readyToSend, step, unconfirmed } from './queue';
import { sendEdits } from './send';

/** Rest after the last keystroke before saving, and between tries without a connection, in milliseconds. */
const rest = 600;
const retry = 4000;

export interface DraftHandle {
  readonly state: QueueState;
  /** The draft as typed so far. */
  readonly content: DraftContent;
  readonly edit: (edit: Edit) => void;
  readonly keepMine: () => void;
  readonly takeTheirs: () => void;
  /** How many edits were brought back from this device when the page opened. */
  readonly restored: number;
  /** Grows when the fields must be drawn anew because their texts changed by other hands than the typist's. */
  readonly generation: number;
  /** False when this device refuses to keep unsaved edits. */
  readonly kept: boolean;
}

export function useDraft(draft: string, address: string, version: number, saved: DraftContent): DraftHandle {
  const [state, dispatch] = useReducer(step, openQueue(version, saved));
  const [restored, setRestored] = useState(0);
  const [opened, setOpened] = useState(false);
  const [kept, setKept] = useState(true);
  const [generation, setGeneration] = useState(0);
  const content = useMemo(() => currentContent(state), [state]);
  const latest = useRef(state);
  useEffect(() => {
    latest.current = state;
  }, [state]);

  useEffect(() => {
    const edits = keptEdits(window.localStorage, draft);
    if (edits.length > 0) {
      dispatch({ on: 'restored', edits });
      setGeneration((g) => g + 1);
    }
    setRestored(edits.length);
    setOpened(true);
  }, [draft]);

  // Put by before anything is sent: a reload in between finds them.
  useEffect(() => {
    if (opened) setKept(keepEdits(window.localStorage, draft, unconfirmed(state)));
  }, [opened, draft, state]);

  useEffect(() => {
    if (!opened || !readyToSend(state)) return;
    const timer = window.setTimeout(() => void send(), state.offline ? retry : rest);
    const online = () => void send();
    window.addEventListener('online', online);
    return () => {
      window.clearTimeout(timer);
      window.removeEventListener('online', online);
    };
    async function send() {
      const now = latest.current;
      if (!readyToSend(now)) return;
      dispatch({ on: 'sent' });
      dispatch(await sendEdits(address, now.version, now.unsent));
    }
  }, [opened, state, address]);

  const settle = useCallback((on: 'keptMine' | 'tookTheirs') => {
    dispatch({ on });
    setGeneration((g) => g + 1);
  }, []);

  return {
    state,
    content,
    edit: useCallback((edit: Edit) => dispatch({ on: 'edited', edit }), []),
    keepMine: useCallback(() => settle('keptMine'), [settle]),
    takeTheirs: useCallback(() => settle('tookTheirs'), [settle]),
    restored,
    generation,
    kept,
  };
}
