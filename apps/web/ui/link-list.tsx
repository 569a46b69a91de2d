import { RowLink } from './row-link.tsx';
import type { Step } from './trail.tsx';

/** Ways to a few things; says so when there are none. */
export function LinkList({ links, none }: { links: readonly Step[]; none: string }) {
  if (links.length === 0) return <p className="text-ink-soft">{none}</p>;
  return (
    <ul className="grid gap-1">
      {links.map(({ href, words }) => (
        <li key={href}>
          <RowLink href={href}>{words}</RowLink>
        </li>
      ))}
    </ul>
  );
}
