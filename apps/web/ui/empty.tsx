import type { ReactNode } from 'react';

/** Where nothing is yet: says what will stand here and how to begin. */
export function Empty({ children, act }: { children: ReactNode; act?: ReactNode }) {
  return (
    <div className="rounded-lg border-2 border-dashed border-line p-6 sm:p-8">
      <p className="max-w-prose text-ink-soft">{children}</p>
      {act && <div className="mt-4 flex flex-wrap gap-3">{act}</div>}
    </div>
  );
}
