'use client';

import { useTranslations } from 'next-intl';
import { type ReactNode, Suspense, useState } from 'react';
import { whenUsed } from '../../lib/when-used.ts';
import { WhoLine } from './who-line.tsx';

const WhoList = whenUsed(() => import('./who-list.tsx').then((file) => file.WhoList));
const ThisDevice = whenUsed(() => import('./this-device.tsx').then((file) => file.ThisDevice));

/** On the field home: who logs here, and what this device is. What is behind both is loaded once it is opened. */
export function WhoLogs({ programme }: { programme: string }) {
  const t = useTranslations('whoLogs');
  return (
    <div className="mt-3 grid gap-2">
      <WhoLine programme={programme} />
      <Opened words={t('title')}>{(close) => <WhoList programme={programme} done={close} />}</Opened>
      <Opened words={t('device')}>{() => <ThisDevice programme={programme} />}</Opened>
    </div>
  );
}

function Opened({ words, children }: { words: string; children: (close: () => void) => ReactNode }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details open={isOpen} onToggle={({ currentTarget }) => setOpen(currentTarget.open)} className="rounded-md border border-line-strong bg-sheet px-4">
      <summary className="min-h-14 cursor-pointer content-center font-semibold">{words}</summary>
      <div className="pb-4">{isOpen && <Suspense>{children(() => setOpen(false))}</Suspense>}</div>
    </details>
  );
}
