'use client';

import { Way } from '../../ui/way.tsx';
import { usePathname } from 'next/navigation';
import type { ReactNode } from 'react';

interface NavLeafProps {
  readonly href: string;
  /** Only this very page, not the pages below it. */
  readonly isExact?: boolean;
  /** Below it, and yet a way of its own. */
  readonly apart?: readonly string[];
  readonly look: string;
  readonly children: ReactNode;
}

/** A way that knows whether one is on it. */
export function NavLeaf({ href, isExact = false, apart = [], look, children }: NavLeafProps) {
  const path = usePathname();
  const isHere = path === href || (!isExact && path.startsWith(`${href}/`) && !apart.includes(path));
  return (
    <Way href={href} aria-current={isHere ? 'page' : undefined} className={look}>
      {children}
    </Way>
  );
}
