// The one table of refusals: stable code → HTTP status and the sentence to show.

interface Told {
  readonly status: 400 | 401 | 403 | 404 | 409 | 410 | 422 | 429 | 500 | 503;
  readonly sentence: string;
}

export const failures = {
  'input.invalid': { status: 400, sentence: 'Please put right what is marked below.' },
  'viewer.none': { status: 401, sentence: 'Please sign in first.' },
  'viewer.role': { status: 403, sentence: 'Your role in this club does not allow this.' },
  'club.notFound': { status: 404, sentence: 'There is no such club, or you are not a member of it.' },
  'club.taken': { status: 409, sentence: 'There is a club with this code already.' },
  'design.notFound': { status: 404, sentence: 'There is no such design, or it is not one of your club’s.' },
  'revision.notFound': { status: 404, sentence: 'This design has no such revision.' },
  'number.notFound': { status: 404, sentence: 'This sheet has no such number.' },
  'thread.notFound': { status: 404, sentence: 'There is no such thread.' },
  'finding.notFound': { status: 404, sentence: 'This revision has no such finding.' },
  'signoff.notFound': { status: 404, sentence: 'There is no such signature.' },
  'coupon.notFound': { status: 404, sentence: 'There is no such coupon test, or it was withdrawn.' },
  'member.notFound': { status: 404, sentence: 'There is no such member in this club.' },
  'invitation.notFound': {
    status: 404,
    sentence: 'This invitation is not known, was used, or was withdrawn.',
  },
  'invitation.expired': {
    status: 410,
    sentence: 'This invitation has expired; ask the steward for a new one.',
  },
  'invitation.member': { status: 409, sentence: 'This person is already a member of the club.' },
  'join.password': { status: 422, sentence: 'This password cannot be used.' },
  'signin.refused': { status: 401, sentence: 'E-mail and password do not match.' },
  'rate.limited': { status: 429, sentence: 'Too many attempts; please wait a little and try again.' },
  'members.lastSteward': { status: 409, sentence: 'A club keeps at least one steward.' },
  'starter.notFound': { status: 404, sentence: 'There is no such starter design.' },
  'draft.stale': { status: 409, sentence: 'Someone saved this draft after you opened it.' },
  'draft.full': {
    status: 422,
    sentence: 'The draft holds too much unfinished text; please put some of it right first.',
  },
  'publish.pending': {
    status: 422,
    sentence: 'Some typed text does not fit its field yet; a revision holds none such.',
  },
  'publish.unchanged': {
    status: 409,
    sentence: 'The draft says the same as the latest revision; nothing to publish.',
  },
  'assessment.current': { status: 409, sentence: 'This revision is already assessed by the present method.' },
  'thread.state': { status: 409, sentence: 'This thread is no longer in that state.' },
  'thread.anchor': { status: 422, sentence: 'A thread must point at something this revision holds.' },
  'thread.opener': {
    status: 403,
    sentence: 'Only the person who opened a thread or a safety officer may resolve it.',
  },
  'finding.author': {
    status: 403,
    sentence: 'Nobody who had a hand in this design disposes of its critical findings.',
  },
  'finding.officer': { status: 403, sentence: 'Only a safety officer disposes of a critical finding.' },
  'finding.changed': { status: 409, sentence: 'This finding now says something else; read it again first.' },
  'signoff.author': { status: 403, sentence: 'Nobody who had a hand in this design signs for it.' },
  'signoff.role': { status: 403, sentence: 'Your role does not sign at this hold point.' },
  'signoff.password': { status: 403, sentence: 'The password is not right; nothing was signed.' },
  'signoff.blocked': {
    status: 409,
    sentence: 'Something still stands against this hold point; nothing was signed.',
  },
  'signoff.changed': {
    status: 409,
    sentence: 'What you were shown has changed since; nothing was signed. Read it again.',
  },
  'signoff.twice': { status: 409, sentence: 'You have already signed here.' },
  'signoff.complete': { status: 409, sentence: 'This hold point already has every signature it needs.' },
  'signoff.void': { status: 409, sentence: 'This signature was already withdrawn.' },
  'signoff.notYours': { status: 403, sentence: 'Only the signer or a safety officer withdraws a signature.' },
  'service.busy': { status: 503, sentence: 'Too much is happening at once; please try again.' },
  'service.fault': { status: 500, sentence: 'Something went wrong on our side; nothing was changed.' },
} as const satisfies Record<string, Told>;

export type FailureCode = keyof typeof failures;

/** Status and sentence of a refusal; the sentence of the case goes before the table's. */
export function tell(failure: { readonly code: FailureCode; readonly sentence?: string }): {
  status: number;
  sentence: string;
} {
  const told = failures[failure.code];
  return { status: told.status, sentence: failure.sentence ?? told.sentence };
}
