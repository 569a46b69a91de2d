import Link from 'next/link';
import type { ComponentProps } from 'react';

/** A link to one of our pages. Nothing is fetched before it is followed: field phones pay by the byte. */
export function Way(props: Omit<ComponentProps<typeof Link>, 'prefetch'>) {
  return <Link {...props} prefetch={false} />;
}
