// The people of a club, their roles, and the invitations that are out.
import type { Metadata } from 'next';
import { PageFrame } from '@/app/_parts/page-frame';
import { shown } from '@/app/_parts/shown';
import { TextForm } from '@/app/_parts/text-form';
import { members } from '@/lib/service/members/members';
import { roleWords } from '@/lib/service/members/role-words';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import type { InvitationView, MembersView, MemberView } from '@/lib/service/views/members';
import { Moment } from '@/lib/ui/marks/time';
import { WordMark } from '@/lib/ui/marks/word-mark';
import { PlainTitle } from '@/lib/ui/sheet/plain-title';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { View } from '@/lib/ui/sheet/view';
import { RuledTable } from '@/lib/ui/table/ruled-table';
import { changeMember, inviteMember, withdrawInvitationOf } from './actions';

interface Props {
  readonly params: Promise<{ club: string }>;
}

export const metadata: Metadata = { title: 'Members' };

export default async function MembersPage({ params }: Props) {
  const { club } = await params;
  const viewer = await currentViewer();
  const result = await members(viewer, { club });
  return shown(result, (view) => (
    <PageFrame club={club} current="members">
      <Sheet title={<MembersTitle view={view} />}>
        <View letter="A" title="People">
          <People view={view} viewerId={viewer?.userId} />
        </View>
        {view.mayChange ? (
          <View letter="B" title="Invitations">
            <Invitations club={club} open={view.invitations} />
          </View>
        ) : null}
      </Sheet>
    </PageFrame>
  ));
}

function MembersTitle({ view }: { readonly view: MembersView }) {
  const present = view.members.filter((m) => m.endedAt === null).length;
  return (
    <PlainTitle
      over={view.club.name}
      title="Members"
      cells={[{ label: 'Present', content: String(present) }]}
    />
  );
}

function People({ view, viewerId }: { readonly view: MembersView; readonly viewerId: string | undefined }) {
  const columns = [
    { label: 'Name' },
    { label: 'Role' },
    { label: 'Since' },
    ...(view.mayChange ? [{ label: 'Change' }] : []),
  ];
  return (
    <RuledTable
      caption="Members of the club"
      columns={columns}
      rows={view.members.map((m) => ({
        key: `${m.userId}-${m.since}`,
        tone: m.endedAt === null ? ('plain' as const) : ('struck' as const),
        cells: [
          <span key="name">
            {m.name} <span className="hush">{m.email}</span>
          </span>,
          m.endedAt === null ? (
            m.roleLabel
          ) : (
            <WordMark key="left" kind="struck">
              left
            </WordMark>
          ),
          <Moment key="since" at={m.since} day />,
          view.mayChange && m.endedAt === null && m.userId !== viewerId ? (
            <Change key="change" club={view.club.code} member={m} />
          ) : null,
        ].slice(0, columns.length),
      }))}
    />
  );
}

function Change({ club, member }: { readonly club: string; readonly member: MemberView }) {
  return (
    <details>
      <summary>Change {member.name}</summary>
      <TextForm
        action={changeMember}
        hidden={{ club, userId: member.userId }}
        failed="Not changed."
        submit="Change"
        inputs={[
          {
            kind: 'choice',
            name: 'role',
            label: 'Role',
            value: member.role,
            options: { ...roleWords, none: 'No longer a member' },
          },
        ]}
      />
    </details>
  );
}

function Invitations({ club, open }: { readonly club: string; readonly open: readonly InvitationView[] }) {
  return (
    <>
      <p>
        An invitation is good for seven days and for one person. Give the address it makes to that person and
        to nobody else.
      </p>
      <TextForm
        action={inviteMember}
        hidden={{ club }}
        failed="Not invited."
        submit="Make an invitation"
        kind="main"
        inputs={[
          { kind: 'line', name: 'email', label: 'E-mail', type: 'email', autoComplete: 'off' },
          { kind: 'choice', name: 'role', label: 'Role', value: 'member', options: roleWords },
        ]}
      />
      {open.length === 0 ? null : (
        <RuledTable
          caption="Invitations that are out"
          captionShown
          columns={[
            { label: 'For' },
            { label: 'As' },
            { label: 'By' },
            { label: 'Until' },
            { label: 'Withdraw' },
          ]}
          rows={open.map((i) => ({
            key: i.invitationId,
            cells: [
              i.email,
              roleWords[i.role],
              i.invitedBy,
              <Moment key="until" at={i.expiresAt} />,
              <TextForm
                key="withdraw"
                action={withdrawInvitationOf}
                hidden={{ club, invitationId: i.invitationId }}
                failed="Not withdrawn."
                submit="Withdraw"
                kind="quiet"
                inputs={[]}
              />,
            ],
          }))}
        />
      )}
    </>
  );
}
