'use client';

import { useTranslations } from 'next-intl';
import { fieldAddress } from '../../lib/field-address.ts';
import { Flag } from '../../ui/flag.tsx';
import { StageMark } from '../../ui/stage-mark.tsx';
import { batchesHere } from '../../lib/phone/batch-here.ts';
import { booksOfHere } from './books-of-here.ts';
import { RowHere } from './row-here.tsx';
import { useFieldPack } from './use-field-pack.ts';

/** Under a walk: what began on this phone and is in no pack yet, ready for more; a row that lost its label; and a note on the place. */
export function NewHere({ programme, walkId }: { programme: string; walkId: string }) {
  const t = useTranslations('act');
  const found = useFieldPack({ programme, walkId });
  if (typeof found !== 'object' || !found.walk) return null;
  const batches = batchesHere(found.walk, found.pack.places, found.entries, found.walks).filter(({ isNew }) => isNew);
  return (
    <>
      {batches.length > 0 && (
        <section aria-labelledby="new-here" className="mt-8">
          <h2 id="new-here" className="text-xl">{t('newHere')}</h2>
          <ul className="mt-3 grid gap-2">
            {batches.map((batch) => (
              <li key={batch.id}>
                <a href={fieldAddress(programme, 'batch', walkId, batch.id)} className="flex min-h-14 flex-wrap items-center gap-x-4 gap-y-1 rounded-md border border-line bg-sheet px-3 py-2 no-underline hover:bg-lichen">
                  <span className="tie-label">{batch.label}</span>
                  <StageMark stage={batch.stage} />
                  <span className="text-sm text-ink-soft">{batch.place}</span>
                  <span className="tabular-nums">{t('there', { n: booksOfHere(batch, found).ahead?.after.balance ?? 0 })}</span>
                  <Flag tone="look">{t('new')}</Flag>
                </a>
              </li>
            ))}
          </ul>
        </section>
      )}
      <RowHere programme={programme} walkId={walkId} found={found} />
      <p className="mt-6"><a href={fieldAddress(programme, 'note', walkId)} className="inline-flex min-h-14 items-center underline">{t('placeNote.go')}</a></p>
    </>
  );
}
