'use client';

import { usePathname } from 'next/navigation';
import { type ReactNode, useEffect, useState } from 'react';

interface NavFoldProps {
  readonly words: string;
  /** Addresses of the ways in it: the group that one is in stands open. */
  readonly hrefs: readonly string[];
  readonly children: ReactNode;
}

/** A group of ways that folds away, so that all groups fit on a screen. Without script it still opens and closes. */
export function NavFold({ words, hrefs, children }: NavFoldProps) {
  const path = usePathname();
  const isHere = hrefs.some((href) => path === href || path.startsWith(`${href}/`));
  const [isOpen, setOpen] = useState(isHere);
  useEffect(() => setOpen(isHere), [isHere]);
  return (
    <details open={isOpen} onToggle={({ currentTarget }) => setOpen(currentTarget.open)} className="nav-fold">
      <summary>{words}</summary>
      {children}
    </details>
  );
}
