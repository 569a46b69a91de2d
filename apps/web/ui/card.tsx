import type { ReactNode } from 'react';

/** A sheet of paper on the bench. */
export function Card({ children }: { children: ReactNode }) {
  return <div className="card rounded-lg border border-line bg-sheet p-5 sm:p-6">{children}</div>;
}
