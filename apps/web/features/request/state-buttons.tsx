import type { PlantRequest } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { changeRequestState } from './change-request.action.ts';

const NEXT = {
  asked: ['promised', 'withdrawn'], promised: ['packed', 'withdrawn'], packed: ['promised', 'withdrawn'], gone: [], withdrawn: ['asked'],
} as const;

/** What can become of a request now, short of its despatch. */
export function StateButtons({ programme, request, etag }: { programme: string; request: PlantRequest; etag: string }) {
  const said = useMessages().requests;
  return (
    <div className="not-on-paper flex flex-wrap gap-3">
      {NEXT[request.state].map((state) => (
        <ActionForm key={state} action={changeRequestState.bind(null, programme, request.id, etag, state)} send={said.stateActs[state]} look={state === 'withdrawn' ? 'grave' : 'quiet'} />
      ))}
    </div>
  );
}
