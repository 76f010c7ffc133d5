'use client';
// Lets every number that a page marks as followed (`data-follow`) unfold in its place. Without script the same words are
// links to the worked sheet.
import { useEffect } from 'react';
import { type FollowedSide, followNumbers } from './follow-numbers';
import { openFolds } from './open-folds';

interface FollowInPlaceProps {
  /** Where the traces come from; on a comparison, both sides in the order they are shown. */
  readonly sides: readonly FollowedSide[];
  /** Where the content of folds comes from that are left off the page; undefined where none is. */
  readonly folds?: string | undefined;
}

/** Draws nothing. */
export function FollowInPlace({ sides, folds }: FollowInPlaceProps) {
  // At every rendering: what a page shows may have been set anew.
  useEffect(() => followNumbers(document, sides));
  useEffect(() => (folds === undefined ? undefined : openFolds(document, folds)), [folds]);
  return null;
}
