import 'server-only';
import { Partner, Person, PlaceInTree, Recipe, Site, Stand, Taxon } from '@sprigline/contract';
import { cache } from 'react';
import { z } from 'zod';
import { read } from './read.ts';
import { apiOf, workplaceOf } from './workplace.ts';

/** Short lists in which many pages look names up; each is read once a request. */
export const standsOf = cache((programme: string) => read(apiOf(programme, 'stands'), z.array(Stand)));
export const taxaOf = cache((programme: string) => read(apiOf(programme, 'taxa'), z.array(Taxon)));
/** Empty for a partner: they are told of no other. */
export const partnersOf = cache(async (programme: string) => ((await workplaceOf(programme)).role === 'partner' ? [] : read(apiOf(programme, 'partners'), z.array(Partner))));
export const recipesOf = cache((programme: string) => read(apiOf(programme, 'recipes'), z.array(Recipe)));
/** In walking order: a place before what lies in it. */
export const placesOf = cache((programme: string) => read(apiOf(programme, 'places'), z.array(PlaceInTree)));
export const sitesOf = cache((programme: string) => read(apiOf(programme, 'sites'), z.array(Site)));
export const peopleOf = cache((programme: string) => read(apiOf(programme, 'people'), z.array(Person)));

/** A site, or a plot of one, with the site that it is of: how partners, who see no tree of places, know a place by name. */
export function atSite(sites: readonly Site[], id: string | undefined): { readonly name: string; readonly site: Site } | undefined {
  const site = sites.find((one) => one.id === id || one.plots.some((plot) => plot.id === id));
  const plot = site?.plots.find((one) => one.id === id);
  return site && { name: plot ? `${site.name}, ${plot.name}` : site.name, site };
}

/** What something is called, by its id; the id's end for what is not in the list. */
export function nameIn(list: readonly { readonly id: string; readonly name: string }[], id: string): string {
  return list.find((one) => one.id === id)?.name ?? `…${id.slice(-6)}`;
}

/** A species as people say it: by its common name where it has one. */
export function taxonName(taxa: readonly Taxon[], id: string): string {
  const taxon = taxa.find((one) => one.id === id);
  return taxon?.commonName ?? taxon?.scientificName ?? `…${id.slice(-6)}`;
}
