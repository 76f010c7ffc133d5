// The whole service on one page: every use case with what it takes and what it answers.
// Each is exported by the file named beside it and typed by its line here.
import type { z } from 'zod';
import type * as coupons from './inputs/coupons';
import type * as designs from './inputs/designs';
import type * as people from './inputs/members';
import type * as review from './inputs/review';
import type { Result } from './result';
import type { Viewer } from './viewer';
import type { CompareView } from './views/compare';
import type { CouponTestsView } from './views/coupons';
import type { DraftSaved, DraftView } from './views/draft';
import type { GainMapView, GainMapWatch } from './views/gain-map';
import type { LedgerVerdict, LedgerView } from './views/ledger';
import type { InvitationOffer, Invited, MembersView, SignedIn } from './views/members';
import type { SheetView } from './views/sheet';
import type { ShelfView } from './views/shelf';
import type { Signed, SigningView } from './views/signing';
import type { TraceView } from './views/trace';

/** A use case for someone signed in; null as viewer is refused with `viewer.none`. */
export type UseCase<I extends z.ZodType, T> = (
  viewer: Viewer | null,
  input: z.input<I>,
) => Promise<Result<T>>;

/** A use case for anyone, signed in or not. */
export type OpenCase<I extends z.ZodType, T> = (input: z.input<I>) => Promise<Result<T>>;

type Nothing = Record<never, never>;

export interface Contract {
  // designs/shelf
  clubShelf: UseCase<typeof designs.clubShelf, ShelfView>;
  // designs/new-design
  newDesign: UseCase<typeof designs.newDesign, { readonly number: string }>;

  // coupons/coupon-tests
  couponTests: UseCase<typeof coupons.couponTests, CouponTestsView>;
  enterCouponTest: UseCase<typeof coupons.enterCouponTest, { readonly testId: string }>;
  withdrawCouponTest: UseCase<typeof coupons.withdrawCouponTest, Nothing>;

  // drafts/open-draft
  openDraft: UseCase<typeof designs.openDraft, DraftView>;
  // drafts/save-draft; refused as `draft.stale` with `detail: DraftStale`
  saveDraft: UseCase<typeof designs.saveDraft, DraftSaved>;
  // drafts/start-anew
  replaceDraftFromRevision: UseCase<typeof designs.replaceDraftFromRevision, DraftSaved>;

  // publishing/publish; refused as `publish.pending` with `fields`: path → sentence
  publish: UseCase<typeof designs.publish, { readonly letter: string }>;
  // publishing/revise-assessment
  reviseAssessment: UseCase<typeof designs.reviseAssessment, { readonly method: string }>;

  // sheets/revision-sheet
  revisionSheet: UseCase<typeof designs.revisionSheet, SheetView>;
  // sheets/compare-revisions
  compareRevisions: UseCase<typeof designs.compareRevisions, CompareView>;
  // sheets/follow-number
  followNumber: UseCase<typeof designs.followNumber, TraceView>;

  // gain-map/gain-map
  gainMap: UseCase<typeof designs.gainMap, GainMapView>;
  startGainMap: UseCase<typeof designs.gainMap, GainMapWatch | null>;
  stopGainMap: UseCase<typeof designs.gainMap, Nothing>;
  watchGainMap: UseCase<typeof designs.gainMap, GainMapWatch | null>;

  // threads/start-thread
  startThread: UseCase<typeof review.startThread, { readonly threadId: string; readonly number: number }>;
  // threads/answer
  reply: UseCase<typeof review.reply, { readonly remarkId: string }>;
  resolveThread: UseCase<typeof review.resolveThread, { readonly remarkId: string }>;
  reopenThread: UseCase<typeof review.reopenThread, { readonly remarkId: string }>;

  // findings/dispose-finding
  disposeFinding: UseCase<typeof review.disposeFinding, { readonly dispositionId: string }>;

  // signing/signing-page
  signingPage: UseCase<typeof review.signingPage, SigningView>;
  // signing/sign; refused as `signoff.blocked` with `detail: BlockerView[]`
  sign: UseCase<typeof review.sign, Signed>;
  // signing/withdraw-signature
  withdrawSignature: UseCase<typeof review.withdrawSignature, Nothing>;

  // members/members
  members: UseCase<typeof people.members, MembersView>;
  // members/invite
  invite: UseCase<typeof people.invite, Invited>;
  withdrawInvitation: UseCase<typeof people.withdrawInvitation, Nothing>;
  // members/change-member
  endMembership: UseCase<typeof people.endMembership, Nothing>;
  changeRole: UseCase<typeof people.changeRole, Nothing>;
  // members/join; then start a session with what it answers
  invitationByToken: OpenCase<typeof people.invitationByToken, InvitationOffer>;
  join: OpenCase<typeof people.join, SignedIn & { readonly clubCode: string }>;

  // sign-in/sign-in
  signIn: OpenCase<typeof people.signIn, SignedIn>;
  // sign-in/sign-out: ends every session of the viewer, on every device
  signOutEverywhere: (viewer: Viewer | null) => Promise<Result<Nothing>>;
  // sign-in/change-password: ends every session of the person; then start a new one with what it answers
  changePassword: UseCase<typeof people.changePassword, SignedIn>;
  // sign-in/viewer
  viewerOf: (session: SignedIn | null) => Promise<Viewer | null>;

  // ledger/ledger-page
  ledgerPage: UseCase<typeof review.ledgerPage, LedgerView>;
  // ledger/verify-ledger: needs only DATABASE_URL; all clubs when `club` is left out
  verifyLedger: (scope?: { readonly club?: string }) => Promise<readonly LedgerVerdict[]>;
  // ledger/health
  health: () => Promise<{ readonly database: 'answers' | 'silent'; readonly milliseconds: number | null }>;
}

// For pages, lib/service/sign-in/page-session (server only):
//   currentViewer(): Promise<Viewer | null>      – the person of the request's session, read once a request
//   startSession(signedIn: SignedIn): Promise<void> – sets the session cookie (in a server action)
//   endSession(): Promise<void>                    – removes it; signing out of this device
//   addressOf(): Promise<string>                   – for the `address` of signIn, join, invitationByToken
