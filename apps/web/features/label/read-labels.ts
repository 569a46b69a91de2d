import 'server-only';
import { LabelLine, LabelRoll } from '@sprigline/contract';
import { z } from 'zod';
import { read } from '../../lib/read.ts';
import { apiOf } from '../../lib/workplace.ts';
import { type LabelsAsked, queryOfLabels } from './label-choice.ts';

/** What the labels of the chosen things say, in walking order. */
export const readLabels = (programme: string, asked: LabelsAsked): Promise<LabelLine[]> => read(`${apiOf(programme, 'labels')}?${queryOfLabels(asked)}`, z.array(LabelLine));

export const readRoll = (programme: string, id: string): Promise<LabelRoll> => read(apiOf(programme, 'label-rolls', id), LabelRoll);
