/** What a label says, the most important first. */
export interface LabelSays {
  /** As it is read aloud: `K58Y 9J69`, or what somebody wrote. */
  readonly code: string;
  /** The donor tree, or the place. */
  readonly title?: string | undefined;
  /** Species, stage, days: left out from the end where there is no room. */
  readonly more: readonly string[];
}

export interface PlacedLine {
  readonly text: string;
  readonly isBold: boolean;
  /** Points. */
  readonly size: number;
  /** Of its upper edge, from that of the room. Points. */
  readonly y: number;
}

/** How wide a text is at one point of size. */
export type WidthOf = (text: string, isBold: boolean) => number;

const LINE = 1.16;
const LEAST_SIZE = 6;
/** Rather so much smaller than a line less. */
const SQUEEZED = 0.86;

interface Wanted { readonly text: string; readonly isBold: boolean; readonly size: number; readonly isCode?: boolean }

/**
 * Puts the words of a label into the room that it has. The code is never cut: it is set smaller, or in two rows.
 *
 * @param room points
 */
export function placedWords(says: LabelSays, room: { width: number; height: number }, widthOf: WidthOf, isWaterproof: boolean): PlacedLine[] {
  const lines = shortEnough(wantedLines(says, room, widthOf, isWaterproof), room.height, widthOf, room.width);
  const total = lines.reduce((sum, { size }) => sum + size * LINE, 0);
  let y = Math.max((room.height - total) / 2, 0);
  return lines.map(({ text, isBold, size }) => {
    const placed = { text, isBold, size, y };
    y += size * LINE;
    return placed;
  });
}

function wantedLines({ code, title, more }: LabelSays, room: { width: number; height: number }, widthOf: WidthOf, isWaterproof: boolean): Wanted[] {
  // Of a label 34 mm high; larger ones are read from further away.
  const measure = Math.min(Math.max(room.height / 90, 0.75), 1.7) * (isWaterproof ? 1.15 : 1);
  const codes = codeRows(code, 13 * measure, room.width, widthOf).map((text) => ({ text, isBold: true, size: 13 * measure, isCode: true }));
  return [
    ...codes,
    ...(title === undefined ? [] : [{ text: title, isBold: true, size: 11 * measure }]),
    ...more.map((text) => ({ text, isBold: isWaterproof, size: 8 * measure })),
  ];
}

/** In its groups, one under the other, where it would have to be set smaller than a fifth. */
function codeRows(code: string, size: number, width: number, widthOf: WidthOf): string[] {
  return widthOf(code, true) * size * 0.8 > width && code.includes(' ') ? code.split(' ') : [code];
}

function shortEnough(wanted: readonly Wanted[], height: number, widthOf: WidthOf, width: number): Wanted[] {
  const lines = wanted.map((line) => narrowed(line, width, widthOf));
  const tall = () => lines.reduce((sum, { size }) => sum + size * LINE, 0);
  const kept = lines.filter(({ isCode }) => isCode).length;
  while (tall() * SQUEEZED > height && lines.length > kept + 1) lines.pop();
  const part = Math.min(height / tall(), 1);
  return part === 1 ? lines : lines.map((line) => ({ ...line, size: line.size * part }));
}

/** Set smaller until it fits; what would get too small to read ends in dots, unless it is the code. */
function narrowed(line: Wanted, width: number, widthOf: WidthOf): Wanted {
  const size = Math.min(line.size, width / widthOf(line.text, line.isBold));
  if (size >= LEAST_SIZE || line.isCode) return { ...line, size };
  let end = line.text.length - 1;
  while (end > 1 && widthOf(`${line.text.slice(0, end).trimEnd()}…`, line.isBold) * LEAST_SIZE > width) end -= 1;
  return { ...line, text: `${line.text.slice(0, end).trimEnd()}…`, size: LEAST_SIZE };
}
