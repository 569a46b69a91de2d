import Link from 'next/link';
import type { Route } from 'next';
import type { ReactNode } from 'react';

/** The way from a row to its page: high enough for a finger. */
export function RowLink({ href, children }: { href: string; children: ReactNode }) {
  return (
    <Link href={href as Route} className="inline-flex min-h-8 items-center underline">
      {children}
    </Link>
  );
}
