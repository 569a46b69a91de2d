import type { Look } from './entry.ts';

/**
 * What people told of roots while the plants were cuttings. From the liner on
 * nobody is asked: a plant without roots does not get there.
 */
export interface RootsTold {
  /** Rooted at the last look, less those that have left since. Nothing when unknown: blank is not 0. */
  readonly seen?: RootsSeen | undefined;
  readonly goneOn: number;
  readonly ever: number;
}

export interface RootsSeen {
  readonly n: number;
  readonly look?: Look | undefined;
  readonly on?: string | undefined;
}

/** In an empty tray none are rooted, and that is known; after a withdrawn opening nothing is. */
export const nothingToldOfRoots = (openingStands: boolean): RootsTold => ({
  ...(openingStands && { seen: { n: 0 } }),
  goneOn: 0,
  ever: 0,
});
