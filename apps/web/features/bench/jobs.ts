import type { Stage } from '@sprigline/contract';

/** Work on many batches at once, as it stands in addresses. */
export const JOBS = ['potting', 'moving', 'mixing', 'planting'] as const;
export type Job = (typeof JOBS)[number];
export const isJob = (job: string): job is Job => JOBS.some((one) => one === job);

/** Stages that a job is for; the first is shown unless another one is asked for. */
export const STAGES_OF: Readonly<Record<Job, readonly Stage[]>> = {
  potting: ['liner', 'cutting'],
  moving: ['cutting', 'liner', 'potted'],
  mixing: ['cutting', 'liner', 'potted'],
  planting: ['potted', 'liner'],
};

/** Fields that each line of a job has. */
export const LINE_FIELDS: Readonly<Record<Job | 'check', readonly string[]>> = {
  potting: ['n', 'label', 'placeId', 'container', 'leavesNone'],
  moving: ['chosen'],
  mixing: ['n'],
  planting: ['n'],
  check: ['alive', 'dead', 'cause', 'notFound', 'notLooked'],
};
