'use client';

import { useTranslations } from 'next-intl';
import { useState } from 'react';
import { buttonClass } from '../button-class.ts';

/** A link that is shown this once, to be copied and handed on. Without script it can still be marked and copied. */
export function MadeOnce({ words, made, madeFor }: { words: string; made: string; madeFor?: string | undefined }) {
  const t = useTranslations('ui');
  const [isCopied, setCopied] = useState(false);

  async function copy() {
    await navigator.clipboard.writeText(made);
    setCopied(true);
  }

  return (
    <div className="grid max-w-prose gap-3 rounded-md border-2 border-juniper bg-lichen p-4 text-on-lichen">
      {madeFor !== undefined && <strong className="text-lg">{madeFor}</strong>}
      <p className="font-semibold">{words}</p>
      <code className="rounded bg-sheet p-3 font-sans text-sm break-all text-ink select-all">{made}</code>
      <button type="button" className={`${buttonClass('quiet')} justify-self-start`} onClick={() => void copy()}>
        {isCopied ? t('copied') : t('copy')}
      </button>
    </div>
  );
}
