import type { Descent } from '@sprigline/contract';
import { STAGES, StageMark } from '../../ui/stage-mark.tsx';

/** Plants alive now, at each of the four stages: a strip from the cutting to the planted tree. */
export function StageCounts({ plantsByStage }: { plantsByStage: Descent['plantsByStage'] }) {
  return (
    <dl className="grid grid-cols-2 overflow-hidden rounded-lg border border-line bg-sheet sm:grid-cols-4">
      {STAGES.map((stage) => (
        <div key={stage} className="border-line p-4 not-first:border-l max-sm:nth-3:border-l-0 max-sm:nth-[n+3]:border-t">
          <dt className="text-sm">
            <StageMark stage={stage} />
          </dt>
          <dd className="mt-1 text-3xl font-semibold tabular-nums">{plantsByStage[stage] ?? 0}</dd>
        </div>
      ))}
    </dl>
  );
}
