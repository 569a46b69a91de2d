import { Sighting } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { z } from 'zod';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { read } from '../../lib/read.ts';
import { apiOf } from '../../lib/workplace.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { Section } from '../../ui/section.tsx';
import { Table } from '../../ui/table.tsx';

/** How a donor tree was seen, sighting by sighting. */
export async function SightingSection({ programme, treeId }: { programme: string; treeId: string }) {
  const [rows, { origins: { sightings: said }, donorTrees }] = await Promise.all([read(apiOf(programme, 'donor-trees', treeId, 'sightings'), z.array(Sighting)), getMessages()]);
  return (
    <div id="sightings">
      <Section heading={said.heading} lead={said.lead}>
        {rows.length === 0 ? (
          <p className="text-ink-soft">{said.none}</p>
        ) : (
          <Table
            caption={said.heading}
            isCaptionHidden
            rows={rows}
            keyOf={({ id }) => id}
            columns={[
              { head: said.columns.on, cell: ({ seenOn }) => sayDay(seenOn) },
              { head: said.columns.state, cell: ({ state }) => donorTrees.state[state] },
              { head: said.columns.by, cell: ({ by }) => by },
              { head: said.columns.note, cell: ({ note }) => note },
            ]}
          />
        )}
        <p className="not-on-paper mt-4"><ButtonLink look="quiet" href={pageOf(programme, 'donor-trees', treeId, 'sighting')}>{said.add}</ButtonLink></p>
      </Section>
    </div>
  );
}
