'use server';

import { getTranslations } from 'next-intl/server';
import { labelBearer } from '../../lib/label-bearer.ts';
import { newId } from '../../lib/new-id.ts';
import type { ScannedBatch } from './scanned.ts';

/** What was scanned while many are being moved: a batch for the list, the place where they go, or why it is neither. */
export type LookedUp =
  | { readonly is: 'batch'; readonly batch: Omit<ScannedBatch, 'at'> }
  | { readonly is: 'place'; readonly placeId: string }
  | { readonly is: 'neither'; readonly words: string; readonly isUnknown?: boolean };

export async function lookUp(programme: string, code: string): Promise<LookedUp> {
  const [bearer, t] = await Promise.all([labelBearer(programme, code), getTranslations('scan')]);
  if (!bearer) return { is: 'neither', words: t('unknown'), isUnknown: true };
  if (bearer.is === 'place') return { is: 'place', placeId: bearer.id };
  if (bearer.is !== 'batch') return { is: 'neither', words: t(bearer.is === 'unclaimed' ? 'moving.unclaimed' : 'moving.donorTree') };
  const { id, label, stage, balance, held, donorTree, stand, taxon, place, rows } = bearer.batch;
  if (balance === 0) return { is: 'neither', words: t('moving.empty') };
  return {
    is: 'batch',
    batch: {
      batchId: id, label: label ?? bearer.code, stage, balance, isHeld: held, what: [donorTree?.label ?? stand?.name, taxon?.name].filter(Boolean).join(', '),
      place: place && [place.name, rows].filter(Boolean).join(', '), entryId: newId(), toBatchId: newId(),
    },
  };
}
