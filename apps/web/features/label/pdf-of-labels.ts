import type { LabelLine, LabelRoll } from '@sprigline/contract';
import { shownLabelCode } from '@sprigline/domain';
import { labelQr } from './label-qr.ts';
import { type LabelVoice, labelSays } from './label-says.ts';
import type { LabelSays } from './label-words.ts';
import type { PrintedLabel } from './labels-pdf.ts';
import type { PrintSettings } from './print-settings.ts';

interface ToPrint {
  readonly code: string;
  readonly says: LabelSays;
}

/** Labels of things that have a code; what has none is left out, and the page before said so. */
export const toPrintOf = (lines: readonly LabelLine[], voice: LabelVoice): ToPrint[] => lines.flatMap((line) => (line.code === null ? [] : [{ code: line.code, says: labelSays(line, voice) }]));

/** Labels of a roll say whose they are, so that one that is found leads home. */
export const toPrintOfRoll = ({ codes }: LabelRoll, programmeName: string, isOnlyFree: boolean): ToPrint[] =>
  codes.filter(({ on }) => on === null || !isOnlyFree).map(({ code }) => ({ code, says: { code: shownLabelCode(code), more: [programmeName] } }));

/** With their codes worked out one by one, when their turn comes. @param address of the install, as people type it */
export function* printedLabels(all: readonly ToPrint[], address: string, { copies, isWaterproof }: PrintSettings): Iterable<PrintedLabel> {
  for (const { code, says } of all) {
    const label = { ...says, qr: labelQr(address, code, isWaterproof) };
    for (let copy = 0; copy < copies; copy += 1) yield label;
  }
}
