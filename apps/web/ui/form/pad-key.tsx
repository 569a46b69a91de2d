'use client';

import type { ReactNode } from 'react';

/** One key, 64 px high. `says` is its name where the sign on it does not speak. */
export function PadKey({ says, press, children }: { says?: string; press: () => void; children: ReactNode }) {
  return (
    <button
      type="button"
      aria-label={says}
      onClick={press}
      className="flex min-h-16 cursor-pointer touch-manipulation items-center justify-center rounded-md border-2 border-line-strong bg-sheet text-2xl font-semibold select-none hover:bg-lichen active:bg-lichen-deep"
    >
      {children}
    </button>
  );
}
