import type { TaxonDays as Days } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { Section } from '../../ui/section.tsx';
import { Table } from '../../ui/table.tsx';

const WHICH = ['firstCheck', 'movingOn', 'verdict'] as const;

/** When cuttings of a species are looked at, moved on and called, and where each day comes from. */
export function TaxonDays({ days }: { days: Days }) {
  const said = useMessages().due.days;
  const t = useTranslations('due.days');
  const source = (which: (typeof WHICH)[number]) => {
    const { basis, stickings } = days[which];
    if (basis === 'written') return said.written;
    return basis === 'history' ? t(`history.${which}`, { n: stickings ?? 0 }) : said.default[which];
  };
  return (
    <Section heading={said.heading} lead={said.lead}>
      <Table
        caption={said.heading}
        isCaptionHidden
        rows={WHICH}
        keyOf={(which) => which}
        columns={[
          { head: said.what, cell: (which) => said[which] },
          { head: said.after, isNumber: true, cell: (which) => <span className="whitespace-nowrap">{t('nDays', { n: days[which].days })}</span> },
          { head: said.from, cell: (which) => <span className="block min-w-56 text-sm text-ink-soft">{source(which)}</span> },
        ]}
      />
      <p className="mt-3 max-w-prose text-sm text-ink-soft">{said.hint}</p>
    </Section>
  );
}
