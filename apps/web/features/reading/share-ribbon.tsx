import { ribbonOf } from './ribbon.ts';

const SHADES = ['fill-lichen-deep', 'fill-lichen'] as const;

/**
 * All plants of a stage as one ribbon, cut by donor tree, most copies first. Neighbours differ
 * in how dark they are; the first, whose share is told in words, is the darkest.
 */
export function ShareRibbon({ perDonor }: { perDonor: readonly number[] }) {
  return (
    <svg className="block h-8 w-full" aria-hidden>
      {ribbonOf(perDonor).map(({ from, width }, at) => (
        <rect key={at} x={`${from}%`} width={`${width}%`} height="32" strokeWidth="1" className={`stroke-sheet ${at === 0 ? 'fill-juniper' : (SHADES[at % 2] ?? '')}`} />
      ))}
      <rect width="100%" height="32" strokeWidth="2" className="fill-transparent stroke-line-strong" />
    </svg>
  );
}
