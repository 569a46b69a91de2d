import { QUIET } from './label-qr.ts';
import { type Rectangle } from './sheets.ts';
import { WHITE_EDGE } from './printer.ts';

/** Millimetres a module: no smaller, or a phone cannot tell them apart; no larger than of use. */
export const SMALLEST_MODULE = 0.5;
const LARGEST_MODULE = { usual: 0.7, waterproof: 1 } as const;

/** At least so much is left for words: eight characters, in two rows if need be. */
const LEAST_WORDS = 11;

export interface LabelLayout {
  /** Side of one module; nothing where no code fits. */
  readonly module?: number;
  /** The dark square, within the label. */
  readonly code?: Rectangle;
  readonly words: Rectangle;
}

/**
 * Where on a label its code and its words go. Millimetres, from the upper left corner of the label.
 *
 * The light modules around a code may be the white edge of the label, since nothing is ever printed there.
 *
 * @param modules side of the code without its light modules; 0 for none
 */
export function layoutOf({ width, height }: { width: number; height: number }, modules: number, isWaterproof: boolean): LabelLayout {
  const whole = { x: WHITE_EDGE, y: WHITE_EDGE, width: width - 2 * WHITE_EDGE, height: height - 2 * WHITE_EDGE };
  const room = Math.min(height, width - WHITE_EDGE - LEAST_WORDS);
  const module = Math.min(room / (modules + 2 * QUIET), LARGEST_MODULE[isWaterproof ? 'waterproof' : 'usual']);
  if (modules === 0 || module < SMALLEST_MODULE) return { words: whole };

  const side = modules * module;
  const quiet = Math.max(QUIET * module, WHITE_EDGE);
  const beside = quiet + side + QUIET * module;
  return {
    module,
    code: { x: quiet, y: (height - side) / 2, width: side, height: side },
    words: { x: beside, y: WHITE_EDGE, width: width - beside - WHITE_EDGE, height: height - 2 * WHITE_EDGE },
  };
}
