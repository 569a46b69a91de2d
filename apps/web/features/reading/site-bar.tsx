interface SiteBarProps {
  readonly alive: number;
  readonly notFound: number;
  readonly lost: number;
}

/** Alive, not found and lost of all that were planted; the sentence above it says the same. */
export function SiteBar({ alive, notFound, lost }: SiteBarProps) {
  const all = Math.max(1, alive + notFound + lost);
  const share = (n: number): string => `${(n / all) * 100}%`;
  return (
    <svg className="mt-3 block h-7 w-full overflow-visible" aria-hidden>
      <rect y="1" width="100%" height="26" strokeWidth="1.25" className="fill-transparent stroke-line-strong" />
      <rect y="1" x={share(alive)} width={share(notFound)} height="26" strokeWidth="1.25" className="fill-lichen stroke-line-strong [stroke-dasharray:3_3]" />
      <rect y="1" width={share(alive)} height="26" strokeWidth="1.25" className="fill-juniper stroke-juniper" />
    </svg>
  );
}
