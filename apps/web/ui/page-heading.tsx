import type { ReactNode } from 'react';

interface PageHeadingProps {
  /** What kind of thing the page is about, above its name. */
  readonly kind?: ReactNode;
  readonly children: ReactNode;
  /** A sentence on what the page is for. */
  readonly lead?: ReactNode;
  /** The main act of the page, beside its name on a desk, below on a phone. */
  readonly act?: ReactNode;
}

/** The name of a page over a row of holes, as a tray shows them. */
export function PageHeading({ kind, children, lead, act }: PageHeadingProps) {
  return (
    <header className="mb-8">
      <div className="flex flex-wrap items-end justify-between gap-x-8 gap-y-4">
        <div className="min-w-0">
          {kind && <p className="mb-1 text-sm font-semibold text-ink-soft">{kind}</p>}
          <h1 className="text-2xl break-words sm:text-3xl">{children}</h1>
          {lead && <p className="mt-2 max-w-prose text-ink-soft">{lead}</p>}
        </div>
        {act && <div className="not-on-paper flex flex-wrap gap-3">{act}</div>}
      </div>
      <div className="row-of-holes mt-5" aria-hidden />
    </header>
  );
}
