import { StageShape } from '../../ui/stage-mark.tsx';
import type { Stage } from '@sprigline/contract';

/** Hills; a tree; a tied bundle; cuttings in a row. Outlines, so that they are told apart in grey. */
const SHAPES = {
  stand: 'M2 19c3-7 5-9 7-9s3 2 5 5c1-2 2-3 3.500-3S21 14 22 19ZM8 10V5M8 7 6 8M8 6l2 1.500',
  donorTree: 'M12 21V4M12 17l-7-3M12 17l7-3M12 12.500 6.500 10M12 12.500l5.500-2.500M12 8 8.500 6.500M12 8l3.500-1.500M5 21h14',
  trip: 'M7 3c2 6 3 12 3 18M12 3v18M17 3c-2 6-3 12-3 18M8 13h8M8 15.500h8',
  sticking: 'M3 20h18M6 20v-9M12 20V8M18 20v-9M6 14l-2-1.500M12 12l-2-1.500M12 12l2-1.500M18 14l2-1.500',
} as const;

export function LineMark({ of }: { of: keyof typeof SHAPES | Stage }) {
  return (
    <span className="family-mark">
      {of in SHAPES ? (
        <svg viewBox="0 0 24 24" className="size-6 shrink-0" aria-hidden>
          <path d={SHAPES[of as keyof typeof SHAPES]} fill="none" stroke="currentColor" strokeWidth="1.7" strokeLinecap="round" strokeLinejoin="round" />
        </svg>
      ) : (
        <StageShape stage={of as Stage} />
      )}
    </span>
  );
}
