import type { DonorHolding } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { Flag } from '../../ui/flag.tsx';
import { Species } from '../../ui/species.tsx';
import { Tag } from '../../ui/tag.tsx';

interface HoldingsListProps {
  readonly programme: string;
  readonly donors: readonly DonorHolding[];
  /** On the page of one stand it goes without saying. */
  readonly isStandHidden?: boolean;
}

/** Donor trees with what is left of them: on a phone one below the other, on a desk in columns. */
export function HoldingsList({ programme, donors, isStandHidden = false }: HoldingsListProps) {
  return (
    <ul className="divide-y divide-line overflow-hidden rounded-lg border border-line bg-sheet">
      {donors.map((donor) => (
        <li key={donor.donorId} className="grid gap-x-6 gap-y-2 px-4 py-3 break-inside-avoid md:grid-cols-[13rem_14rem_1fr]">
          <div>
            <Tag href={pageOf(programme, 'donor-trees', donor.treeId)}>{donor.label}</Tag>
            {!isStandHidden && <p className="mt-1 text-sm text-ink-soft">{donor.stand}, {donor.commonName?.toLowerCase() ?? <Species name={donor.taxon} />}</p>}
          </div>
          <Left donor={donor} />
          <Risks donor={donor} />
        </li>
      ))}
    </ul>
  );
}

function Left({ donor: { rootedNow, rootedEver, plants, places } }: { donor: DonorHolding }) {
  const t = useTranslations('readings.donors');
  return (
    <div className="tabular-nums">
      <p className="font-semibold">{rootedNow === null ? t('notTold') : t('rooted', { n: rootedNow })}</p>
      <p className="text-sm text-ink-soft">{t('inAll', { plants, places })}</p>
      {rootedNow !== null && rootedEver > rootedNow && <p className="text-sm text-ink-soft">{t('ever', { n: rootedEver })}</p>}
    </div>
  );
}

function Risks({ donor: { risks } }: { donor: DonorHolding }) {
  const { home: { risks: said } } = useMessages();
  if (risks.length === 0) return null;
  return (
    <ul className="flex flex-wrap content-start gap-1.5">
      {risks.map((risk) => (
        <li key={risk}><Flag tone={risk === 'last-copies' ? 'grave' : 'look'}>{said[risk]}</Flag></li>
      ))}
    </ul>
  );
}
