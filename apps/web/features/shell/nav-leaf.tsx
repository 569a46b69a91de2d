'use client';

import { Way } from '../../ui/way.tsx';
import { usePathname } from 'next/navigation';
import type { ReactNode } from 'react';

interface NavLeafProps {
  readonly href: string;
  /** Only this very page, not the pages below it. */
  readonly isExact?: boolean;
  readonly look: string;
  readonly children: ReactNode;
}

/** A way that knows whether one is on it. */
export function NavLeaf({ href, isExact = false, look, children }: NavLeafProps) {
  const path = usePathname();
  const isHere = path === href || (!isExact && path.startsWith(`${href}/`));
  return (
    <Way href={href} aria-current={isHere ? 'page' : undefined} className={look}>
      {children}
    </Way>
  );
}
