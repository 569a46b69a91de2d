import { Way } from './way.tsx';
import type { ReactNode } from 'react';

/** The way from a row to its page: high enough for a finger. */
export function RowLink({ href, children }: { href: string; children: ReactNode }) {
  return (
    <Way href={href} className="inline-flex min-h-8 items-center underline">
      {children}
    </Way>
  );
}
