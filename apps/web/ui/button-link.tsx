import Link from 'next/link';
import type { Route } from 'next';
import type { ReactNode } from 'react';
import { type ButtonLook, buttonClass } from './button-class.ts';

export function ButtonLink({ href, look = 'main', children }: { href: string; look?: ButtonLook; children: ReactNode }) {
  return (
    <Link href={href as Route} className={buttonClass(look)}>
      {children}
    </Link>
  );
}
