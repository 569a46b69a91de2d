import type { DeterminationEffects } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { Caution } from '../../ui/caution.tsx';
import { LinkList } from '../../ui/link-list.tsx';
import { Section } from '../../ui/section.tsx';
import { StageMark } from '../../ui/stage-mark.tsx';
import { Table } from '../../ui/table.tsx';
import { Tag } from '../../ui/tag.tsx';

/** Every batch, label, site and reading that another donor tree would change, before it is written. */
export function EffectsView({ programme, effects }: { programme: string; effects: DeterminationEffects }) {
  const said = useMessages().origins;
  const t = useTranslations('origins');
  const { from, to, stickings, batches, labels, sites, stands, taxonChanges, partners, plants } = effects;
  return (
    <Section heading={said.changes} lead={<>{t('from', { tree: from?.label ?? said.unknown })} {t('to', { tree: to?.label ?? said.unknown })}</>}>
      <ul className="mb-6 grid max-w-prose list-disc gap-1 pl-6">
        <li><strong>{t('plants', { n: plants })}</strong></li>
        <li>{t('stickings', { n: stickings.length })}</li>
        {partners.lose.length > 0 && <li>{t('lose', { partners: partners.lose.join(', ') })}</li>}
        {partners.gain.length > 0 && <li>{t('gain', { partners: partners.gain.join(', ') })}</li>}
      </ul>
      {taxonChanges && <div className="mb-6"><Caution>{said.taxonChanges}</Caution></div>}
      <h3 className="text-lg">{said.batches}</h3>
      <p className="mb-3 text-ink-soft">{said.batchesLead}</p>
      <Table
        caption={said.batches}
        isCaptionHidden
        rows={batches}
        keyOf={({ id }) => id}
        columns={[
          { head: said.batch, cell: ({ id, label }) => <Tag href={pageOf(programme, 'batches', id)}>{label ?? said.noLabel}</Tag> },
          { head: said.stage, cell: ({ stage, isMixed }) => <><StageMark stage={stage} /> {isMixed && said.mixed}</> },
          { head: said.place, cell: ({ place }) => place?.name },
          { head: said.alive, isNumber: true, cell: ({ balance }) => balance },
        ]}
      />
      <h3 className="mt-6 text-lg">{said.labels}</h3>
      <p className="max-w-prose">{labels.length === 0 ? said.none : t('labelsLead', { labels: labels.join(', ') })}</p>
      <h3 className="mt-6 text-lg">{said.sites}</h3>
      <LinkList none={said.none} links={sites.map(({ place, plants: n }) => ({ href: pageOf(programme, 'places', place.id), words: t('sitePlants', { name: place.name, n }) }))} />
      <h3 className="mt-6 text-lg">{said.reports}</h3>
      <p className="max-w-prose text-ink-soft">{said.reportsLead}</p>
      <LinkList none={said.none} links={stands.map(({ id, name }) => ({ href: pageOf(programme, 'readings', 'stands', id), words: name }))} />
    </Section>
  );
}
