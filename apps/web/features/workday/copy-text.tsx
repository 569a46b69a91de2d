'use client';

import { useState } from 'react';
import { buttonClass } from '../../ui/button-class.ts';

/** Text to take along. Without script it can still be marked and copied. */
export function CopyText({ text, label, copy, copied }: { text: string; label: string; copy: string; copied: string }) {
  const [isCopied, setCopied] = useState(false);
  async function take() {
    await navigator.clipboard.writeText(text);
    setCopied(true);
  }
  return (
    <div className="not-on-paper grid max-w-prose gap-3">
      <pre aria-label={label} tabIndex={0} className="overflow-x-auto rounded-md border border-line bg-sheet p-4 font-sans whitespace-pre-wrap select-all">{text}</pre>
      <button type="button" className={`${buttonClass('quiet')} justify-self-start`} onClick={() => void take()}>{isCopied ? copied : copy}</button>
    </div>
  );
}
