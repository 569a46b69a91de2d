import type { Invitation } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayMoment } from '../../lib/calendar.ts';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { withdrawInvitation } from './withdraw-invitation.action.ts';

interface InvitationListProps {
  readonly programme: string;
  readonly invitations: readonly Invitation[];
  readonly zone: string;
}

/** Invitations that still open the door, each with the way to close it. */
export function InvitationList({ programme, invitations, zone }: InvitationListProps) {
  const { words } = useMessages();
  const t = useTranslations('people');
  return (
    <ul className="grid gap-3">
      {invitations.map(({ id, forName, role, madeBy, expiresAt }) => (
        <li key={id} className="flex flex-wrap items-center justify-between gap-x-6 gap-y-3 rounded-lg border border-line bg-sheet p-4">
          <span>
            <strong className="block">{forName}</strong>
            <span className="text-sm text-ink-soft">{t('invitationIs', { role: words.role[role], by: madeBy, until: sayMoment(expiresAt, zone) })}</span>
          </span>
          <ActionForm action={withdrawInvitation.bind(null, programme, id)} send={t('withdraw', { name: forName })} look="grave" />
        </li>
      ))}
    </ul>
  );
}
