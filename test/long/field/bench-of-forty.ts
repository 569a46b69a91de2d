import { type APIRequestContext, expect, request } from '@playwright/test';
import { type Demo, HARROWDALE } from '../../e2e/product/people.ts';
import { newId } from '../../support/people.ts';

/** What is walked in the story. */
export const BENCH = 'Forty bench';
const BATCHES = 40;
const STAGES = ['cutting', 'cutting', 'liner', 'potted'] as const;

export type Who = 'volunteer' | 'coordinator';

/** Somebody signed in at the API. @param demo where, and with which passwords */
export async function atDesk({ url, passwords }: Demo, who: Who): Promise<APIRequestContext> {
  const desk = await request.newContext({ baseURL: url, extraHTTPHeaders: { origin: url } });
  const answer = await desk.post('/api/auth/sign-in/email', { data: { email: `${who}@harrowdale.example`, password: passwords[who] } });
  expect(answer.ok(), await answer.text()).toBe(true);
  return desk;
}

export async function read<T>(desk: APIRequestContext, path: string): Promise<T> {
  const answer = await desk.get(`/api/v1${HARROWDALE}/${path}`);
  if (!answer.ok()) throw new Error(`GET ${path} answered ${answer.status()} ${await answer.text()}`);
  return (await answer.json()) as T;
}

/** A bench with forty batches of twenty plants, of three stages, and a tray to stick into. */
export async function makeBench(desk: APIRequestContext): Promise<void> {
  const send = async (path: string, data: object) => {
    const answer = await desk.post(`/api/v1${HARROWDALE}/${path}`, { data });
    expect(answer.ok(), `${path}: ${await answer.text()}`).toBe(true);
    return answer;
  };
  const [placeId, donors] = [newId(), await read<{ id: string }[]>(desk, 'donor-trees')];
  await send('places', { id: placeId, kind: 'bench', name: BENCH });
  await send('places', { id: newId(), kind: 'tray', name: 'Forty tray', parentId: placeId, rows: 9 });
  const entries = Array.from({ length: BATCHES }, (_, at) => ({
    id: newId(), observedOn: '2026-03-02', writtenAt: '2026-03-02T10:00:00Z',
    saying: {
      kind: 'received', source: 'opening', batchId: newId(), stickingId: newId(), stage: STAGES[at % STAGES.length], n: 20, placeId,
      donorTreeId: donors[at % donors.length]?.id, label: `FB-${String(at + 1).padStart(2, '0')}`,
    },
  }));
  const written = (await (await send('entries', { entries })).json()) as { entries: { status: string }[] };
  expect(written.entries.filter(({ status }) => status !== 'written')).toEqual([]);
}
