import { number, text } from './form-values.ts';

/** A measured place as its fields say it; nothing where none of them was filled in. */
export function exactPlaceSaid(form: FormData, prefix = '') {
  const place = {
    latitude: number(form, `${prefix}latitude`),
    longitude: number(form, `${prefix}longitude`),
    uncertaintyM: number(form, `${prefix}uncertaintyM`),
    elevationM: number(form, `${prefix}elevationM`),
    directions: text(form, `${prefix}directions`),
  };
  return Object.values(place).some((value) => value !== undefined) ? place : undefined;
}
