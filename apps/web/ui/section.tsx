import { type ReactNode, useId } from 'react';

/** A part of a page under its own heading. */
export function Section({ heading, lead, children }: { heading: ReactNode; lead?: ReactNode; children: ReactNode }) {
  const id = useId();
  return (
    <section aria-labelledby={id} className="mb-12">
      <h2 id={id} className="text-xl">
        {heading}
      </h2>
      {lead && <p className="mt-1 max-w-prose text-ink-soft">{lead}</p>}
      <div className="mt-4">{children}</div>
    </section>
  );
}
