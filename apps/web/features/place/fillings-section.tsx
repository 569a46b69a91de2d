import type { Filling } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { Section } from '../../ui/section.tsx';
import { Table } from '../../ui/table.tsx';

/** With what a tray was filled, the last time first. */
export function FillingsSection({ fillings }: { fillings: readonly Filling[] }) {
  const said = useMessages().places;
  const { fillingColumns: columns } = said;
  return (
    <Section heading={said.fillings}>
      {fillings.length === 0 ? <p className="text-ink-soft">{said.noFillings}</p> : (
        <Table
          caption={said.fillings}
          isCaptionHidden
          rows={fillings}
          keyOf={({ id }) => id}
          columns={[
            { head: columns.filledOn, cell: ({ filledOn }) => sayDay(filledOn) },
            { head: columns.medium, cell: ({ medium }) => medium },
            { head: columns.mediumLot, cell: ({ mediumLot }) => mediumLot },
            { head: columns.howCleaned, cell: ({ howCleaned }) => howCleaned },
            { head: columns.plantsStayed, cell: ({ plantsStayed }) => plantsStayed && said.stayed },
          ]}
        />
      )}
    </Section>
  );
}
