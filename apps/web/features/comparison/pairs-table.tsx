import type { CompareBy, ComparedGroup, ComparedPair } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { Table } from '../../ui/table.tsx';
import { groupName } from './group-name.ts';
import { times } from './pair-words.ts';

const signed = (share: number): string => `${share < 0 ? '−' : share > 0 ? '+' : ''}${Math.abs(share * 100).toFixed(1)}`;

/** Table twin of what the cards say. */
export function PairsTable({ pairs, groups, against, by }: { pairs: readonly ComparedPair[]; groups: ReadonlyMap<string, ComparedGroup>; against: ComparedGroup; by: CompareBy }) {
  const words = useMessages();
  const { table: said } = words.comparison;
  const t = useTranslations('comparison.table');
  const nameOf = (key: string): string => groupName(groups.get(key) ?? { key, name: key, hormone: null }, by, words);
  return (
    <Table
      caption={t('caption', { second: groupName(against, by, words) })}
      rows={pairs}
      keyOf={({ first }) => first}
      columns={[
        { head: words.comparison.shares.group, cell: ({ first }) => nameOf(first) },
        { head: said.difference, isNumber: true, cell: ({ found }) => (found ? signed(found.difference) : said.notTold) },
        { head: said.range, isNumber: true, cell: ({ found }) => found && <span className="whitespace-nowrap">{signed(found.lower)} … {signed(found.upper)}</span> },
        { head: said.odds, isNumber: true, cell: ({ found }) => found?.odds && <span className="whitespace-nowrap">{oddsSaid(found.odds)}</span> },
        { head: said.chance, isNumber: true, cell: ({ found }) => found && chanceSaid(found.chanceOfAll) },
      ]}
    />
  );
}

function oddsSaid({ ratio, lower, upper }: { ratio: number | null; lower: number | null; upper: number | null }): string {
  if (ratio === null) return '';
  return lower === null || upper === null ? times(ratio) : `${times(ratio)} (${times(lower)} … ${times(upper)})`;
}

function chanceSaid(chance: number | null): string {
  if (chance === null) return '';
  return chance < 0.001 ? '< 0.1' : (chance * 100).toFixed(1);
}
