import { CloneGroup } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { read } from '../../lib/read.ts';
import { apiOf } from '../../lib/workplace.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { Flag } from '../../ui/flag.tsx';
import { Section } from '../../ui/section.tsx';
import { Table } from '../../ui/table.tsx';

/** Which trees are one clone with it, by whose word; and of how many it is only assumed that they are distinct. */
export async function CloneSection({ programme, treeId, isDesk }: { programme: string; treeId: string; isDesk: boolean }) {
  const [{ trees, said: rows, stand }, { origins: { clones: said, holds } }, t] = await Promise.all([read(apiOf(programme, 'donor-trees', treeId, 'clone'), CloneGroup), getMessages(), getTranslations('origins.clones')]);
  const others = trees.filter(({ id }) => id !== treeId).map(({ label }) => label);
  return (
    <div id="clones">
      <Section heading={said.heading} lead={said.lead}>
        <p className="font-semibold">{others.length > 0 ? t('trees', { labels: others.join(', ') }) : said.alone}</p>
        <p className="mt-1 max-w-prose text-ink-soft">{t('assumed', { trees: stand.trees, clones: stand.clones, assumed: stand.assumedDistinct })}</p>
        {rows.length > 0 && (
          <div className="mt-4">
            <Table
              caption={said.caption}
              isCaptionHidden
              rows={rows}
              keyOf={({ id }) => id}
              columns={[
                { head: said.columns.on, cell: ({ saidOn }) => sayDay(saidOn) },
                { head: said.columns.trees, cell: ({ tree, other }) => `${tree.label}, ${other.label}` },
                { head: said.columns.what, cell: ({ isSame }) => (isSame ? said.same : said.apart) },
                { head: said.columns.evidence, cell: ({ evidence }) => evidence },
                { head: said.columns.by, cell: ({ by }) => by },
                { head: said.columns.holds, cell: (one) => one.holds && <Flag tone="good">{holds}</Flag> },
              ]}
            />
          </div>
        )}
        {isDesk && <p className="not-on-paper mt-4"><ButtonLink look="quiet" href={pageOf(programme, 'donor-trees', treeId, 'clone')}>{said.state}</ButtonLink></p>}
      </Section>
    </div>
  );
}
