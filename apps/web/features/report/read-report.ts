import 'server-only';
import { FunderReport, HandoverReport, LandownerReport } from '@sprigline/contract';
import { read } from '../../lib/read.ts';
import { apiOf } from '../../lib/workplace.ts';
import { queryOf } from './report-address.ts';

type Asked = Readonly<Record<string, string>>;

export const readLandowner = (programme: string, asked: Asked): Promise<LandownerReport> => read(`${apiOf(programme, 'reports', 'landowner')}${queryOf(asked)}`, LandownerReport);
export const readFunder = (programme: string, asked: Asked): Promise<FunderReport> => read(`${apiOf(programme, 'reports', 'funder')}${queryOf(asked)}`, FunderReport);
export const readHandover = (programme: string): Promise<HandoverReport> => read(apiOf(programme, 'reports', 'handover'), HandoverReport);
