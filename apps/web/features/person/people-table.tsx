import type { Partner, Person } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { nameIn } from '../../lib/lists.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Flag } from '../../ui/flag.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { Table } from '../../ui/table.tsx';

interface PeopleTableProps {
  readonly programme: string;
  readonly people: readonly Person[];
  readonly partners: readonly Partner[];
}

/** For the desk: who works here, as what, and who may see exact places. */
export function PeopleTable({ programme, people, partners }: PeopleTableProps) {
  const { people: said, words } = useMessages();
  const roleOf = ({ role, partnerId }: Person) => (role ? `${words.role[role]}${partnerId ? `, ${nameIn(partners, partnerId)}` : ''}` : undefined);
  const seesExact = ({ role, seesExact: isGranted }: Person) => isGranted || role === 'owner' || role === 'coordinator';
  return (
    <Table
      caption={said.title}
      isCaptionHidden
      rows={people}
      keyOf={({ id }) => id}
      columns={[
        { head: said.fields.name, cell: ({ id, name }) => <RowLink href={pageOf(programme, 'people', id)}>{name}</RowLink> },
        { head: said.fields.role, cell: (person) => (person.hasAccount ? roleOf(person) : <span className="text-ink-soft italic">{said.byName}</span>) },
        { head: said.fields.seesExact, cell: (person) => seesExact(person) && <Flag tone="good">{said.yes}</Flag> },
      ]}
    />
  );
}
