import { pageOf } from '../../lib/page-address.ts';

/** The list as it was looked at, by kind, person and part, once so many doubts of it are decided. */
export const backTo = (programme: string, kept: string, decided: number): string =>
  `${pageOf(programme, 'review')}?${new URLSearchParams([...new URLSearchParams(kept), ['decided', String(decided)]])}`;
