'use client';

import Link from 'next/link';
import { usePathname } from 'next/navigation';
import type { Route } from 'next';
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
    <Link href={href as Route} prefetch={false} aria-current={isHere ? 'page' : undefined} className={look}>
      {children}
    </Link>
  );
}
