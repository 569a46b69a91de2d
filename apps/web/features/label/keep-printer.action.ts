'use server';

import { getTranslations } from 'next-intl/server';
import { revalidatePath } from 'next/cache';
import { cookies } from 'next/headers';
import type { FormState } from '../../lib/form-state.ts';
import { number } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Refused } from '../../lib/refused.ts';
import { submit } from '../../lib/submit.ts';
import { PRINTER_COOKIE, PRINTER_KEPT_S, sayPrinter } from './print-settings.ts';
import { printerOf } from './printer.ts';

/** Keeps on this device how its printer misses, from four lengths that somebody measured. */
export async function keepPrinter(programme: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, async () => {
    const [left, top, across, down] = (['left', 'top', 'across', 'down'] as const).map((name) => Number(number(form, name) ?? Number.NaN));
    const printer = printerOf({ left, top, across, down } as Record<'left' | 'top' | 'across' | 'down', number>);
    if (!printer) {
      const words = (await getTranslations('labels.calibration'))('far');
      throw new Refused({ type: 'about:blank', title: words, detail: words, status: 422 });
    }
    (await cookies()).set(PRINTER_COOKIE, sayPrinter(printer), { path: '/', maxAge: PRINTER_KEPT_S, sameSite: 'lax' });
  });
  revalidatePath(pageOf(programme, 'labels', 'printer'));
  return state;
}

/** Prints from now on as if the printer were true. */
export async function forgetPrinter(programme: string, before: FormState): Promise<FormState> {
  (await cookies()).delete(PRINTER_COOKIE);
  revalidatePath(pageOf(programme, 'labels', 'printer'));
  return { turn: before.turn + 1, values: {}, isDone: true };
}
