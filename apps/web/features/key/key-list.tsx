import type { Key } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay, sayMoment } from '../../lib/calendar.ts';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { Table } from '../../ui/table.tsx';
import { revokeKey } from './revoke-key.action.ts';

/** Every key ever made, each that still opens with the way to close it. */
export function KeyList({ programme, keys, zone }: { programme: string; keys: readonly Key[]; zone: string }) {
  const said = useMessages().keys;
  const t = useTranslations('keys');
  return (
    <Table
      caption={said.title}
      isCaptionHidden
      keyOf={({ id }) => id}
      rows={keys}
      columns={[
        { head: said.head.name, cell: ({ name }) => name },
        { head: said.head.whose, cell: ({ partner }) => partner?.name ?? said.ofProgramme },
        { head: said.head.start, cell: ({ start }) => <code>{start}…</code> },
        { head: said.head.scopes, cell: ({ scopes }) => scopes.map((scope) => said.fields[`scopes/${scope}`]).join(', ') },
        { head: said.head.used, cell: ({ lastUsedAt }) => (lastUsedAt ? sayMoment(lastUsedAt, zone) : said.never) },
        { head: said.head.until, cell: ({ expiresAt }) => sayDay(expiresAt.slice(0, 10)) },
        { head: said.head.state, cell: ({ id, name, state }) => (state === 'open' ? <ActionForm action={revokeKey.bind(null, programme, id)} send={t('revoke', { name })} look="grave" /> : said.states[state]) },
      ]}
    />
  );
}
