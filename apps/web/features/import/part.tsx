import type { ReactNode } from 'react';

/** Fields that belong together, under their own heading. */
export function Part({ heading, lead, children }: { heading: string; lead?: string; children: ReactNode }) {
  return (
    <fieldset className="w-full">
      <legend className="text-lg font-semibold">{heading}</legend>
      {lead && <p className="max-w-prose text-ink-soft">{lead}</p>}
      <div className="mt-3 grid gap-4 sm:grid-cols-2 xl:grid-cols-3">{children}</div>
    </fieldset>
  );
}
