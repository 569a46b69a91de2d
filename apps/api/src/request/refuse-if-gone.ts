import type { PlantRequest } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';

/** @throws DomainError `request/gone-already` */
export function refuseIfGone({ state }: PlantRequest): void {
  if (state === 'gone') throw new DomainError('request/gone-already', 'make a new request; what went is mended in the history of its batches');
}
