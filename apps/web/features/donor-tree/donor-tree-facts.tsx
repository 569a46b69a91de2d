import type { DonorTree, Stand, Taxon } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { nameIn, taxonName } from '../../lib/lists.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Cell } from '../../ui/cell.tsx';
import { Facts } from '../../ui/facts.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { TreeState } from './tree-state.tsx';

interface DonorTreeFactsProps {
  readonly programme: string;
  readonly tree: DonorTree;
  readonly stands: readonly Stand[];
  readonly taxa: readonly Taxon[];
  /** Notes are for the house. */
  readonly hasNote: boolean;
}

export function DonorTreeFacts({ programme, tree, stands, taxa, hasNote }: DonorTreeFactsProps) {
  const said = useMessages().donorTrees;
  const t = useTranslations('donorTrees');
  const age = [tree.ageClass && said.ageClass[tree.ageClass], tree.estimatedAgeYears && t('about', { years: tree.estimatedAgeYears })].filter(Boolean).join(', ');
  return (
    <Facts
      facts={[
        { term: said.fields.standId, says: <RowLink href={pageOf(programme, 'stands', tree.standId)}>{nameIn(stands, tree.standId)}</RowLink> },
        { term: said.fields.taxonId, says: taxonName(taxa, tree.taxonId) },
        { term: said.fields.state, says: <><TreeState state={tree.state} /> {tree.stateSeenOn && sayDay(tree.stateSeenOn)}</> },
        { term: said.fields.sex, says: said.sex[tree.sex] },
        { term: said.age, says: age === '' ? undefined : age },
        { term: said.fields.elevationBandM, says: tree.elevationBandM === null ? undefined : t('elevation', { from: tree.elevationBandM, to: tree.elevationBandM + 50 }) },
        { term: said.cell, says: <Cell cell={tree.cell} /> },
        ...(hasNote ? [{ term: said.fields.note, says: tree.note }] : []),
      ]}
    />
  );
}
