import type { Diversity, DonorHolding, DonorHoldings, FunnelGroup, Funnels } from '@sprigline/contract';

export interface SpeciesOfStand {
  readonly taxonId: string;
  readonly taxon: string;
  readonly commonName: string | null;
  readonly group: FunnelGroup | undefined;
  readonly diversity: Diversity['stands'][number] | undefined;
  readonly donors: readonly DonorHolding[];
}

/** What three readings tell of one stand, put together species by species; those without donor trees or plants are left out. */
export function speciesOf({ groups }: Pick<Funnels, 'groups'>, { stands }: Pick<Diversity, 'stands'>, { donors }: Pick<DonorHoldings, 'donors'>): SpeciesOfStand[] {
  const species = new Map<string, Pick<SpeciesOfStand, 'taxon' | 'commonName'>>();
  for (const { taxonId, taxon, commonName } of [...groups, ...stands]) {
    if (taxonId !== null && taxon !== null) species.set(taxonId, { taxon, commonName });
  }
  return [...species].map(([taxonId, names]) => ({
    taxonId,
    ...names,
    group: groups.find((group) => group.taxonId === taxonId),
    diversity: stands.find((stand) => stand.taxonId === taxonId),
    donors: donors.filter(({ taxon }) => taxon === names.taxon),
  }));
}
