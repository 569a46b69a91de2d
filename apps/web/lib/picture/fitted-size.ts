export interface Size {
  readonly width: number;
  readonly height: number;
}

/**
 * The size that a picture is drawn at: its shape is kept, neither side is longer than allowed, and nothing is made larger.
 *
 * @param longest pixels, at least 1
 * @returns whole pixels, at least one a side
 */
export function fittedSize({ width, height }: Size, longest: number): Size {
  const scale = Math.min(1, longest / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}
