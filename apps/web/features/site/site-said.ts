import { number, text } from '../../lib/form-values.ts';

/** The body of a site, as its fields say it. Without a latitude nothing is told of where it lies. */
export function siteSaid(form: FormData) {
  const latitude = number(form, 'cell/latitude');
  const longitude = number(form, 'cell/longitude');
  const isPlaced = latitude !== undefined || longitude !== undefined;
  return {
    name: text(form, 'name'),
    walkOrder: number(form, 'walkOrder') ?? 0,
    land: text(form, 'land'),
    partnerId: text(form, 'partnerId'),
    note: text(form, 'note'),
    cell: isPlaced ? { latitude, longitude, degrees: number(form, 'cell/degrees') } : undefined,
  };
}
