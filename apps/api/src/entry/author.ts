import { type Caller, deliveredBy, type Role } from '../http/caller.ts';

/** Who writes, as far as the server knows. What they claim about who saw it stands in the entry. */
export interface Author {
  readonly programmeId: string;
  readonly personId: string;
  readonly role: Role;
  /** The session or key that brought it. */
  readonly deliveredBy: string;
  /** The programme's zone: it decides on which day an entry was received. */
  readonly zone: string;
}

export const authorOf = (caller: Caller): Author => {
  const { programmeId, personId, role, zone } = caller;
  return { programmeId, personId, role, deliveredBy: deliveredBy(caller), zone };
};
