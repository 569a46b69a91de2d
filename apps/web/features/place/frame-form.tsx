'use client';

import { useMessages, useTranslations } from 'next-intl';
import { type MouseEvent, useState } from 'react';
import { between, boxOfRow, type Frame } from '../../lib/tray-rows.ts';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { choicesFrom } from '../../ui/form/choices.ts';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { RowMap } from '../../ui/row-map.tsx';
import { frameTray } from './frame-tray.action.ts';

const EDGES = ['left', 'top', 'right', 'bottom'] as const;

interface FrameFormProps {
  readonly programme: string;
  readonly placeId: string;
  readonly photoId: string;
  readonly picture: { readonly src: string; readonly width: number; readonly height: number; readonly frame: Frame };
  readonly rows: number;
}

/** Puts the outlines right: two corners tapped into the picture, or typed. Without script they are typed. */
export function FrameForm({ programme, placeId, photoId, picture: { src, width, height, frame: known }, rows }: FrameFormProps) {
  const { rowMap: said } = useMessages().places;
  const t = useTranslations('places.rowMap');
  const [frame, setFrame] = useState(known);
  const [first, setFirst] = useState<{ readonly x: number; readonly y: number }>();

  function tap({ currentTarget, clientX, clientY }: MouseEvent<HTMLElement>): void {
    const { left, top, width: wide, height: high } = currentTarget.getBoundingClientRect();
    const here = { x: ((clientX - left) / wide) * 100, y: ((clientY - top) / high) * 100 };
    setFirst(first ? undefined : here);
    if (!first) return;
    const next = between(first, here);
    setFrame({ ...frame, ...next });
    for (const edge of EDGES) {
      const field = document.getElementById(edge);
      if (field instanceof HTMLInputElement) field.value = String(next[edge]);
    }
  }
  const outlines = Array.from({ length: rows }, (_, at) => ({ key: String(at), name: String(at + 1), box: boxOfRow(frame, at + 1, rows) }));
  const corner = first && { key: 'corner', name: '1', box: { x: first.x, y: first.y, width: 8, height: 8 } };

  return (
    <div className="mt-2 grid items-start gap-6 md:grid-cols-2">
      <div>
        {/* As high as its longest words: the picture must not move between two taps. */}
        <p role="status" className="mb-2 min-h-18">{t(first ? 'tapSecond' : 'tapFirst')}</p>
        {/* For a finger or a mouse; the fields beside it do the same. */}
        <div onClick={tap} className="cursor-crosshair touch-manipulation"><RowMap width={width} height={height} picture={src} outlines={corner ? [corner] : outlines} /></div>
      </div>
      <ActionForm action={frameTray.bind(null, programme, placeId, photoId)} labels={said.fields} send={said.send}>
        <p className="max-w-prose text-sm text-ink-soft">{said.typed}</p>
        <div className="grid grid-cols-2 gap-4" onChange={({ target }) => target instanceof HTMLInputElement && setFrame(changed(frame, target.id, target.value))}>
          {EDGES.map((edge) => <TextField key={edge} name={edge} keypad="numeric" value={known[edge]} />)}
        </div>
        <div onChange={({ target }) => target instanceof HTMLInputElement && setFrame({ ...frame, labelSide: target.value as Frame['labelSide'] })}>
          <RadioField name="labelSide" choices={choicesFrom(said.sides)} value={known.labelSide} hint={said.sideHint} />
        </div>
      </ActionForm>
    </div>
  );
}

/** With one edge as it is typed; what is no figure yet, or leaves no inside, changes nothing. */
function changed(frame: Frame, edge: string, typed: string): Frame {
  const next = /^\d{1,3}$/.test(typed.trim()) ? { ...frame, [edge]: Number(typed) } : frame;
  return next.left < next.right && next.top < next.bottom ? next : frame;
}
