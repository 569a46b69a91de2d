import { Way } from './way.tsx';
import type { ReactNode } from 'react';
import { type ButtonLook, buttonClass } from './button-class.ts';

export function ButtonLink({ href, look = 'main', children }: { href: string; look?: ButtonLook; children: ReactNode }) {
  return (
    <Way href={href} className={buttonClass(look)}>
      {children}
    </Way>
  );
}
