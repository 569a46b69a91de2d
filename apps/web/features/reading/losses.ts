import type { FunnelStage } from '@sprigline/contract';

export interface Loss {
  readonly way: 'died' | 'missing' | 'notRooted' | 'thrownOut';
  /** Of deaths only. */
  readonly cause?: string;
  readonly at: Readonly<Partial<Record<FunnelStage['stage'], number>>>;
  readonly plants: number;
}

/** Every way in which plants were lost, most first; deaths by their cause. Ways that took none are left out. */
export function lossesOf(stages: readonly FunnelStage[]): Loss[] {
  const causes = [...new Set(stages.flatMap(({ died }) => Object.keys(died)))];
  const ways = [
    ...causes.map((cause) => loss(stages, 'died', ({ died }) => died[cause] ?? 0, cause)),
    loss(stages, 'missing', ({ unaccounted }) => unaccounted),
    loss(stages, 'notRooted', ({ notRooted }) => notRooted),
    loss(stages, 'thrownOut', ({ thrownOut }) => thrownOut),
  ];
  return ways.filter(({ plants }) => plants > 0).sort((a, b) => b.plants - a.plants || ((a.cause ?? a.way) < (b.cause ?? b.way) ? -1 : 1));
}

function loss(stages: readonly FunnelStage[], way: Loss['way'], of: (stage: FunnelStage) => number, cause?: string): Loss {
  const at = Object.fromEntries(stages.map((stage) => [stage.stage, of(stage)]));
  return { way, ...(cause !== undefined && { cause }), at, plants: stages.reduce((sum, stage) => sum + of(stage), 0) };
}
