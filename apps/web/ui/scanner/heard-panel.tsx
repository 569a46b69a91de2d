import type { ScanAnswer } from './scanner.tsx';

export interface Heard extends Omit<ScanAnswer, 'isTaken'> {
  /** Not known yet: it is being looked up. */
  readonly isTaken: boolean | undefined;
  readonly code?: string | undefined;
  /** Counts what was heard, so that the same twice is seen to change. */
  readonly turn: number;
}

/** Large enough to be seen from the corner of an eye, and read out: a sign, the code, what became of it. */
export function HeardPanel({ heard }: { heard: Heard | undefined }) {
  const look = heard?.isTaken === undefined ? 'border-line-strong bg-sheet' : heard.isTaken ? 'border-juniper bg-lichen text-on-lichen' : 'border-rust bg-rust-wash text-rust';
  return (
    <div role="status" className="empty:hidden">
      {heard && (
        <div key={heard.turn} className={`heard flex min-h-24 items-center gap-4 rounded-md border-4 p-4 ${look}`}>
          <span aria-hidden className="text-3xl font-semibold">{heard.isTaken === undefined ? '…' : heard.isTaken ? '✓' : '✕'}</span>
          <p className="min-w-0 break-words">
            {heard.code && <strong className="block text-xl">{heard.code}</strong>}
            {heard.words}
          </p>
        </div>
      )}
    </div>
  );
}
