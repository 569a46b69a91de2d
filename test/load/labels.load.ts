import { monitorEventLoopDelay } from 'node:perf_hooks';
import { setTimeout as sleep } from 'node:timers/promises';
import { diceOf, labelCodes, shownLabelCode } from '@sprigline/domain';
import { expect, test } from 'vitest';
import { printedLabels } from '../../apps/web/features/label/pdf-of-labels.ts';
import { labelsPdf } from '../../apps/web/features/label/labels-pdf.ts';
import { TRUE_PRINTER } from '../../apps/web/features/label/printer.ts';
import { SHEETS } from '../../apps/web/features/label/sheets.ts';

// How long anybody else waits while labels are drawn: the longest pause of the event loop, beside that of a process with
// nothing to do. The bar for a thousand labels, on a quiet machine: fifty milliseconds. Printed, nothing asserted.
const MANY = 1_000;

test('a thousand labels flow out while others have their turn', async () => {
  const idle = await pauses(() => sleep(2_000));
  const rows: (readonly [string, typeof idle])[] = [['nothing to do', idle]];
  for (const [what, n] of [['the first label of a process', 1], ['one label', 1], ['a thousand labels', MANY], ['a thousand labels, once more', MANY]] as const) {
    rows.push([what, await pauses(() => drawn(n))]);
  }
  const line = ({ longest, own, usual, ms, at }: typeof idle): string =>
    `${longest.toFixed(1).padStart(7)} ms ${(longest / idle.longest).toFixed(1).padStart(6)}x of idle; own work ${own.toFixed(1)} ms, at ${at} of it; 99 of 100 below ${usual.toFixed(1)} ms; ${Math.round(ms)} ms in all`;
  console.log(['Labels, longest pauses', ...rows.map(([what, measured]) => `  ${what.padEnd(34)} ${line(measured)}`)].join('\n'));
  expect(rows.every(([, { ms }]) => ms > 0)).toBe(true);
});

async function drawn(n: number): Promise<void> {
  const all = labelCodes(diceOf(7), n).map((code, at) => ({ code, says: { code: shownLabelCode(code), title: `CR-${at % 40}`, more: [`stuck 12 Mar 2026, ${at}`, 'Winterbeck Scar'] } }));
  const labels = printedLabels(all, 'https://plants.example.org', { copies: 1, isWaterproof: false } as Parameters<typeof printedLabels>[2]);
  const pdf = labelsPdf({ title: 'Labels', language: 'en', sheet: SHEETS[0]!, printer: TRUE_PRINTER, start: 1, isWaterproof: false, hasLines: false, labels });
  let bytes = 0;
  for await (const part of pdf) bytes += (part as Buffer).length;
  expect(bytes).toBeGreaterThan(1_000);
}

/** Milliseconds. `own`: the most that this process worked between two turns of others, however busy the machine was; `at`: how far it had come then. */
async function pauses(work: () => Promise<unknown>): Promise<{ longest: number; own: number; usual: number; ms: number; at: string }> {
  const delay = monitorEventLoopDelay({ resolution: 1 });
  const begin = performance.now();
  let [last, longest] = [begin, 0];
  let [lastOwn, own, ownAt] = [process.cpuUsage(), 0, begin];
  const clock = setInterval(() => {
    const now = performance.now();
    longest = Math.max(longest, now - last);
    last = now;
    const { user, system } = process.cpuUsage(lastOwn);
    lastOwn = process.cpuUsage();
    if ((user + system) / 1_000 > own) [own, ownAt] = [(user + system) / 1_000, now];
  }, 1);
  delay.enable();
  await work();
  await sleep(5);
  delay.disable();
  clearInterval(clock);
  const ms = performance.now() - begin;
  return { longest, own, usual: delay.percentile(99) / 1e6, ms, at: `${Math.round(((ownAt - begin) / ms) * 100)} %` };
}
