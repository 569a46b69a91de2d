import type { Comparison } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { HowWorked } from '../../ui/how-worked.tsx';
import { More } from '../../ui/more.tsx';
import { Section } from '../../ui/section.tsx';
import { addressOf, canBeLaidOut } from './comparison-address.ts';
import { PairCard } from './pair-card.tsx';
import { PairsTable } from './pairs-table.tsx';
import { SharesFigure } from './shares-figure.tsx';

interface ComparedPartsProps {
  readonly comparison: Comparison;
  /** The address of the page as it is. */
  readonly query: Readonly<Record<string, string>>;
  readonly csv: string;
  readonly isPartner: boolean;
}

/** First what the books tell, pair by pair; then the shares behind it. */
export function ComparedParts({ comparison: { by, groups, against, pairs, secondTries }, query, csv, isPartner }: ComparedPartsProps) {
  const { comparison: said } = useMessages();
  const t = useTranslations('comparison');
  const of = new Map(groups.map((group) => [group.key, group]));
  const second = of.get(against ?? '');
  return (
    <>
      {second && pairs.length > 0 ? (
        <Section heading={said.pairs.heading} lead={t('pairs.lead', { n: pairs.length })}>
          <div className="grid gap-5">
            {pairs.map((pair) => {
              const first = of.get(pair.first);
              return first && <PairCard key={pair.first} pair={pair} first={first} second={second} by={by} pairs={pairs.length} trial={canBeLaidOut(by) && !isPartner ? `${addressOf({ ...query, trial: pair.first })}#trial` : undefined} />;
            })}
          </div>
          <div className="mt-3 text-sm">
            <More words={said.table.words}><PairsTable pairs={pairs} groups={of} against={second} by={by} /></More>
            <HowWorked said={said.worked.pairs} />
          </div>
        </Section>
      ) : <p className="mb-8 text-lg">{second ? t('onlyOne', { by: said.by[by] }) : said.noneTold}</p>}
      <Section heading={said.shares.heading} lead={said.shares.lead}>
        <SharesFigure groups={groups} by={by} csv={csv} />
        {secondTries > 0 && <p className="mt-3 max-w-prose text-ink-soft">{t('secondTries', { n: secondTries })}</p>}
      </Section>
    </>
  );
}

/** The pair whose trial is laid out: the one asked for, else the first that could not be told. */
export function pairForTrial({ by, pairs }: Comparison, asked: string | undefined): Comparison['pairs'][number] | undefined {
  if (!canBeLaidOut(by)) return undefined;
  return pairs.find(({ first }) => first === asked) ?? pairs.find(({ state, found }) => state === 'mixed-up' || (state === 'compared' && found?.isTold === false));
}

