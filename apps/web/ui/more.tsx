import type { ReactNode } from 'react';

/** What not everybody asks for, one step away; opens without script. */
export function More({ words, children }: { words: string; children: ReactNode }) {
  return (
    <details>
      <summary className="min-h-8 cursor-pointer py-1 underline">{words}</summary>
      <div className="mt-1 mb-3">{children}</div>
    </details>
  );
}
