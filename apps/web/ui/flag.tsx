import type { ReactNode } from 'react';

export type FlagTone = 'plain' | 'good' | 'look' | 'grave';

const TONES: Readonly<Record<FlagTone, { sign: string; look: string }>> = {
  plain: { sign: '', look: 'border-line-strong bg-slate-wash text-on-slate' },
  good: { sign: '✓', look: 'border-lichen-deep bg-lichen text-on-lichen' },
  look: { sign: '!', look: 'border-on-straw bg-straw text-on-straw' },
  grave: { sign: '▲', look: 'border-rust bg-rust-wash text-rust' },
};

/** A word on the state of something. The sign before it says the tone without colour. */
export function Flag({ tone = 'plain', children }: { tone?: FlagTone; children: ReactNode }) {
  const { sign, look } = TONES[tone];
  return (
    <span className={`inline-flex items-center gap-1.5 rounded border px-2 py-0.5 text-sm font-semibold ${look}`}>
      {sign && <span aria-hidden>{sign}</span>}
      {children}
    </span>
  );
}
