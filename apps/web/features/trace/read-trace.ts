import 'server-only';
import { Trace } from '@sprigline/contract';
import { read } from '../../lib/read.ts';
import { apiOf } from '../../lib/workplace.ts';
import { queryOf } from './trace-address.ts';

export const readTrace = (programme: string, asked: Readonly<Record<string, string>>, limit: number): Promise<Trace> =>
  read(`${apiOf(programme, 'trace')}${queryOf(asked, { limit: String(limit) })}`, Trace);
