// Every address of the service, so that no page spells one by hand.
import type { HoldPoint } from '@/lib/review/hold-points';

export const addresses = {
  home: '/',
  signIn: '/sign-in',
  cautions: '/cautions',
  account: '/account',
  handbook: '/handbook',
  materials: '/handbook/materials',
  join: (token: string) => `/join/${token}`,
  shelf: (club: string) => `/clubs/${club}`,
  newDesign: (club: string) => `/clubs/${club}/new`,
  coupons: (club: string) => `/clubs/${club}/coupons`,
  members: (club: string) => `/clubs/${club}/members`,
  ledger: (club: string) => `/clubs/${club}/ledger`,
  draft: (design: string) => `/designs/${design}/draft`,
  saveDraft: (design: string) => `/designs/${design}/draft/save`,
  /** @param method of the assessment to show; left out: the newest */
  revision: (design: string, letter: string, method?: string | null) =>
    `/designs/${design}/${letter}${withMethod(method)}`,
  /** The same sheet with nothing left off. */
  inFull: (design: string, letter: string, method?: string | null) =>
    `/designs/${design}/${letter}?in=full${method == null ? '' : `&method=${encodeURIComponent(method)}`}`,
  /** Where the content of a fold of the sheet is fetched from; the fold, or a row in it, is named by `of`. */
  fold: (design: string, letter: string, method?: string | null) =>
    `/designs/${design}/${letter}/fold${withMethod(method)}`,
  remark: (design: string, letter: string) => `/designs/${design}/${letter}/remark`,
  decide: (design: string, letter: string, about: string) =>
    `/designs/${design}/${letter}/decide?about=${encodeURIComponent(about)}`,
  reopen: (design: string, letter: string, thread: number) =>
    `/designs/${design}/${letter}/reopen?thread=${thread}`,
  withdraw: (design: string, letter: string, signature: string) =>
    `/designs/${design}/${letter}/withdraw?signature=${signature}`,
  worked: (design: string, letter: string) => `/designs/${design}/${letter}/worked`,
  gainMap: (design: string, letter: string) => `/designs/${design}/${letter}/gain-map`,
  /** Where the map is started, stopped, and told how far it is. */
  gainMapWork: (design: string, letter: string) => `/designs/${design}/${letter}/gain-map/work`,
  /** Where a number of a revision or of the draft is followed from; the number is named by `of`. */
  trace: (design: string, side: string, method?: string | null) =>
    `/designs/${design}/trace/${side}${withMethod(method)}`,
  compare: (design: string, before: string, after: string) => `/designs/${design}/compare/${before}/${after}`,
  /** Where the content of a fold of the comparison is fetched from. */
  compareFold: (design: string, before: string, after: string) =>
    `/designs/${design}/compare/${before}/${after}/fold`,
  sign: (design: string, letter: string, holdPoint: HoldPoint) =>
    `/designs/${design}/${letter}/sign/${holdPoint}`,
} as const;

function withMethod(method: string | null | undefined): string {
  return method == null ? '' : `?method=${encodeURIComponent(method)}`;
}
