import 'server-only';
import { Me, Programme, type Role } from '@sprigline/contract';
import { notFound } from 'next/navigation';
import { cache } from 'react';
import { today } from './calendar.ts';
import { read } from './read.ts';

/** The programme that a page is about, and what the person who looks at it is there. */
export interface Workplace extends Programme {
  readonly me: { readonly name: string; readonly personId: string };
  readonly role: Role;
  /** Answers for the stock: coordinator or owner. What they may do is for the API to say; this only spares others the buttons. */
  readonly isDesk: boolean;
  /** Today in the programme's zone. */
  readonly today: string;
  /** Programmes they work in, this one among them. */
  readonly programmes: number;
}

/** Read once a request, however many parts of the page ask. */
export const workplaceOf = cache(async (handle: string): Promise<Workplace> => {
  const me = await meNow();
  const membership = me.programmes.find((programme) => programme.handle === handle);
  if (!membership) notFound();

  const programme = await read(apiOf(handle), Programme);
  return {
    ...programme,
    me: { name: me.name, personId: membership.personId },
    role: membership.role,
    isDesk: membership.role === 'coordinator' || membership.role === 'owner',
    today: today(programme.zone),
    programmes: me.programmes.length,
  };
});

export const meNow = cache((): Promise<Me> => read('/api/v1/me', Me));

/** Address of a programme's thing in the API; each part is made safe for an address. */
export function apiOf(programme: string, ...parts: readonly string[]): string {
  return `/api/v1/programmes/${[programme, ...parts].map(encodeURIComponent).join('/')}`;
}
