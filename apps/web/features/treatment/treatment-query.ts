import { TreatmentKind } from '@sprigline/contract';

/** What the address of the record asks for. */
export type TreatmentSearch = Readonly<Partial<Record<'what' | 'placeId' | 'from' | 'until', string>>>;

/** As the API is asked: sprays unless something else is said, since their record is what others ask for; `all` is everything. */
export function treatmentQuery({ what = 'spray', placeId, from, until }: TreatmentSearch): URLSearchParams {
  const kind = TreatmentKind.safeParse(what).data;
  const asked = Object.entries({ what: kind, placeId, from, until }).filter((pair): pair is [string, string] => Boolean(pair[1]));
  return new URLSearchParams(asked);
}

/** The same as it stands in the address of a page. */
export function treatmentAddress(asked: URLSearchParams): URLSearchParams {
  const address = new URLSearchParams(asked);
  if (!address.has('what')) address.set('what', 'all');
  return address;
}
