import { type ReactNode, useId } from 'react';

interface SectionProps {
  readonly heading: ReactNode;
  readonly lead?: ReactNode;
  /** For what leads to wild trees: whoever prints the page takes the rest of it along, and a sheet lies about. */
  readonly isOffPaper?: boolean;
  readonly children: ReactNode;
}

/** A part of a page under its own heading. */
export function Section({ heading, lead, isOffPaper = false, children }: SectionProps) {
  const id = useId();
  return (
    <section aria-labelledby={id} className={`mb-12 ${isOffPaper ? 'not-on-paper' : ''}`}>
      <h2 id={id} className="text-xl">
        {heading}
      </h2>
      {lead && <p className="mt-1 max-w-prose text-ink-soft">{lead}</p>}
      <div className="mt-4">{children}</div>
    </section>
  );
}
