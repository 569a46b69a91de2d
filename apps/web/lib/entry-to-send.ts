import type { NewEntry } from '@sprigline/contract';
import type { z } from 'zod';

/** An entry as it is sent: what has a usual value may be left out. */
export type EntryToSend = z.input<typeof NewEntry>;
