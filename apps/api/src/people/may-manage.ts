import type { Role } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';

/** Owners manage everybody; coordinators manage volunteers, people of partners, and those without an account. */
export const mayManage = (mine: Role, theirs: Role | null): boolean =>
  mine === 'owner' || (mine === 'coordinator' && theirs !== 'owner' && theirs !== 'coordinator');

/** @throws DomainError `person/not-yours-to-manage` */
export function refuseUnlessManages(mine: Role, ...theirs: (Role | null)[]): void {
  if (!theirs.every((role) => mayManage(mine, role))) {
    throw new DomainError('person/not-yours-to-manage', 'ask an owner of the programme: coordinators and owners are for owners to choose');
  }
}
