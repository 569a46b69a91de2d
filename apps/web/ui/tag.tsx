import { Way } from './way.tsx';
import type { ReactNode } from 'react';

/** A label as it hangs on a plant or a tree: whatever is tied on with a code looks like this everywhere. */
export function Tag({ href, children }: { href?: string; children: ReactNode }) {
  if (!href) return <span className="tie-label">{children}</span>;
  return (
    <Way href={href} className="tie-label">
      {children}
    </Way>
  );
}
