import 'server-only';
import { cookies } from 'next/headers';
import { PRINTER_COOKIE, printerSaid } from './print-settings.ts';
import type { Printer } from './printer.ts';

/** How the printer of this device misses; nothing while nobody has measured it. */
export const keptPrinter = async (): Promise<Printer | undefined> => printerSaid((await cookies()).get(PRINTER_COOKIE)?.value);
