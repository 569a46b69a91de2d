import type { Partner } from '@sprigline/contract';
import { nameIn } from '../../lib/lists.ts';

/** A partner by name, or somebody outside as they were told. */
export const whoAsks = ({ partnerId, outside }: { readonly partnerId: string | null; readonly outside: string | null }, partners: readonly Partner[]): string =>
  partnerId === null ? (outside ?? '') : nameIn(partners, partnerId);
