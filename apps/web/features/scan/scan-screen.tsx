'use client';

import { useMessages } from 'next-intl';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { Scanner } from '../../ui/scanner/scanner.tsx';
import { findLabel } from './find-label.action.ts';

interface ScanScreenProps {
  readonly programme: string;
  /** The address that labels are printed with. */
  readonly address: string;
  /** The page itself, for typing without script. */
  readonly action: string;
}

/** One scan lands on what the label is on. */
export function ScanScreen({ programme, address, action }: ScanScreenProps) {
  const { scanner } = useMessages().scan;
  const { push } = useRouter();

  async function open(code: string) {
    const found = await findLabel(programme, code);
    if (found.href) push(found.href as Route);
    return found;
  }

  return <Scanner words={scanner} addresses={[address]} action={action} onCode={open} onPage={(path) => push(path as Route)} />;
}
