import { day, number, text } from './form-values.ts';

/** Where the fields of an entry stand in the body that the API is sent, so that what does not fit finds its field. */
export const ENTRY = 'entries/0/';
export const SAYING = `${ENTRY}saying/`;

/** An entry out of a form. What does not fit is for the API to say. */
export interface UncheckedEntry {
  readonly id: string;
  readonly saying: object;
  readonly [told: string]: unknown;
}

/** The entry around what is said. Its minute was made with the page, so that sending again sends the same. */
export function entrySaid(form: FormData, saying: object): UncheckedEntry {
  const observedOn = day(form, `${ENTRY}observedOn`);
  return {
    id: text(form, `${ENTRY}id`) ?? '',
    observedOn,
    ...(observedOn === text(form, 'madeOn') ? { minute: number(form, 'minute') } : {}),
    writtenAt: text(form, 'writtenAt'),
    seenBy: text(form, `${ENTRY}seenBy`),
    workdayId: text(form, `${ENTRY}workdayId`),
    note: text(form, `${ENTRY}note`),
    saying,
  };
}

/** Some of the dead, line by line; lines without a number say nothing. */
export function deadSaid(form: FormData, lines: number): object[] {
  return Array.from({ length: lines }, (_, at) => `${SAYING}dead/${at}/`).flatMap((line) => {
    const n = number(form, `${line}n`);
    return n === undefined ? [] : [{ n, cause: text(form, `${line}cause`) }];
  });
}
