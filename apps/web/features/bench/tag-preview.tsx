'use client';

import { DomainError, type Tagged } from '@sprigline/domain';
import { useTranslations } from 'next-intl';
import { useEffect, useRef, useState } from 'react';
import { taggedOf } from './tagged.ts';

interface TagPreviewProps {
  readonly lines: number;
  /** What batches are called, by their id. */
  readonly names: Readonly<Record<string, string>>;
  /** Words for what does not fit, by code. */
  readonly refusals: Readonly<Record<string, string>>;
}

/** Which plant gets which tag, worked out while it is typed. */
export function TagPreview({ lines, names, refusals }: TagPreviewProps) {
  const t = useTranslations('bench.preview');
  const box = useRef<HTMLElement>(null);
  const [tagged, setTagged] = useState<readonly Tagged[]>([]);
  const [words, setWords] = useState<string>();

  useEffect(() => {
    const form = box.current?.closest('form');
    if (!form) return undefined;
    function look() {
      try {
        setTagged(taggedOf(new FormData(form ?? undefined), lines));
        setWords(undefined);
      } catch (error) {
        if (!(error instanceof DomainError)) throw error;
        setTagged([]);
        const { plants, labels, positions } = error.facts;
        setWords(error.code === 'planting/no-plants' ? undefined : [refusals[error.code], plants !== undefined && t('counts', { plants, labels: labels ?? 0, positions: positions ?? 0 })].filter(Boolean).join(' '));
      }
    }
    form.addEventListener('input', look);
    look();
    return () => form.removeEventListener('input', look);
  }, [lines, refusals, t]);

  return (
    <section ref={box} aria-labelledby="tag-preview" className="w-full">
      <h2 id="tag-preview" className="text-xl">{t('title')}</h2>
      <p role="status" className={words ? 'font-semibold text-rust' : 'text-ink-soft'}>{words ?? (tagged.length > 0 ? t('lead', { n: tagged.length }) : t('wait'))}</p>
      {tagged.length > 0 && (
        <div role="region" aria-label={t('title')} tabIndex={0} className="mt-3 max-h-96 overflow-auto rounded-lg border border-line bg-sheet print:max-h-none">
          <table className="w-full border-collapse text-left">
            <thead className="border-b-2 border-line-strong">
              <tr>{(['label', 'batch', 'position'] as const).map((column) => <th key={column} scope="col" className="px-4 py-2 text-sm text-ink-soft">{t(`columns.${column}`)}</th>)}</tr>
            </thead>
            <tbody>
              {tagged.map(({ label, batchId, position }) => (
                <tr key={label} className="border-b border-line last:border-b-0"><th scope="row" className="px-4 py-1.5 font-semibold">{label}</th><td className="px-4 py-1.5">{names[batchId]}</td><td className="px-4 py-1.5">{position}</td></tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </section>
  );
}
