import { z } from 'zod';
import { Day, Id, orNothing, Words } from './shapes.ts';

const Content = z.strictObject({ name: Words, since: Day, /** Last day of the relation. */ until: orNothing(Day) });

const endsAfterItBegins = (told: { since: string; until: string | null }): boolean => told.until === null || told.until >= told.since;
const ORDER = { path: ['until'], error: 'must not be before it begins' };

/** An outside group with its own people, stands or sites. Body of PUT. */
export const PartnerContent = Content.refine(endsAfterItBegins, ORDER);
export type PartnerContent = z.infer<typeof PartnerContent>;

export const NewPartner = Content.extend({ id: Id }).refine(endsAfterItBegins, ORDER);
export type NewPartner = z.infer<typeof NewPartner>;

export const Partner = z.object({ ...Content.shape, id: Id });
export type Partner = z.infer<typeof Partner>;
