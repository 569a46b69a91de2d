'use client';

import { useMessages } from 'next-intl';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { Scanner } from '../../ui/scanner/scanner.tsx';
import { relabel } from './give-label.action.ts';

/** Scans the label that a batch is given. */
export function RelabelScreen({ programme, batchId, address }: { programme: string; batchId: string; address: string }) {
  const { scanner } = useMessages().scan;
  const { push } = useRouter();

  async function give(code: string) {
    const given = await relabel(programme, batchId, code);
    if (given.href) push(given.href as Route);
    return given;
  }

  return <Scanner words={scanner} addresses={[address]} onCode={give} />;
}
