import { useTranslations } from 'next-intl';

/** In the order in which a plant goes through them. */
export const STAGES = ['cutting', 'liner', 'potted', 'planted'] as const;
export type Stage = (typeof STAGES)[number];

/** Drawn as outlines, so that they are told apart in grey: a stick, a stick with roots, a pot, a tree on the ground. */
const SHAPES: Readonly<Record<Stage, string>> = {
  cutting: 'M12 20V5M12 12 8 9.500M12 9l4-2.500M4 20h16',
  liner: 'M12 14V3M12 9 8.500 7M12 7l3.500-2M5 14h14M12 14v6M12 16l-4 4M12 16l4 4',
  potted: 'M5 13h14l-2 8H7ZM12 13V3M12 9 8 7M12 7.500l4-2',
  planted: 'M3 20h18M12 20V4M12 16l-6-3M12 16l6-3M12 11 7.500 8.500M12 11l4.500-2.500M12 6.500 10 5.500M12 6.500l2-1',
};

/** Where a plant has got to: shape and word. */
export function StageMark({ stage, isWordHidden = false }: { stage: Stage; isWordHidden?: boolean }) {
  const t = useTranslations('words.stage');
  return (
    <span className="inline-flex items-center gap-1.5 whitespace-nowrap">
      <StageShape stage={stage} />
      <span className={isWordHidden ? 'sr-only' : ''}>{t(stage)}</span>
    </span>
  );
}

/** The shape alone, for charts that write the word themselves. */
export function StageShape({ stage }: { stage: Stage }) {
  // Its own size stands in it too: inside a chart no class gives it one.
  return (
    <svg viewBox="0 0 24 24" width="24" height="24" className="size-6 shrink-0" aria-hidden>
      <path d={SHAPES[stage]} fill="none" stroke="currentColor" strokeWidth="1.8" strokeLinecap="round" strokeLinejoin="round" />
    </svg>
  );
}
