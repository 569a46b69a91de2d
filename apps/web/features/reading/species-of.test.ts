import type { Diversity, DonorHolding, FunnelGroup } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { speciesOf } from './species-of.ts';

const juniper = { taxonId: 'j', taxon: 'Juniperus communis', commonName: 'Juniper' };
const yew = { taxonId: 'y', taxon: 'Taxus baccata', commonName: null };
const group = (of: typeof juniper | typeof yew): FunnelGroup => ({ ...of, key: of.taxonId, name: 'Corran Ridge', standId: 's', firstStuckOn: null, lastStuckOn: null, verdictOn: null, donors: { came: 1, left: 1 }, stages: [] });
const stand = (of: typeof juniper | typeof yew): Diversity['stands'][number] => ({ ...of, standId: 's', stand: 'Corran Ridge', donorTrees: 1, assumedDistinct: 1, stages: [] });
const donor = (label: string, { taxon, commonName }: typeof juniper | typeof yew): DonorHolding => ({
  donorId: label, treeId: label, label, stand: 'Corran Ridge', standId: 's', taxon, commonName, rootedNow: 1, rootedEver: 1, plants: 1, places: 1, wildTree: 'standing', risks: [],
});

test('what belongs to one species stands together', () => {
  const species = speciesOf({ groups: [group(juniper), group(yew)] }, { stands: [stand(juniper), stand(yew)] }, { donors: [donor('CY-1', yew), donor('CR-1', juniper)] });
  expect(species.map(({ taxon, group: of, diversity, donors }) => [taxon, of?.taxonId, diversity?.taxonId, donors.map(({ label }) => label)])).toEqual([
    ['Juniperus communis', 'j', 'j', ['CR-1']], ['Taxus baccata', 'y', 'y', ['CY-1']],
  ]);
});

test('donor trees from which nothing was stuck yet are still a species of the stand', () => {
  expect(speciesOf({ groups: [] }, { stands: [stand(yew)] }, { donors: [] })).toMatchObject([{ taxonId: 'y', group: undefined, donors: [] }]);
});
