import { qrShape } from './qr-shape.ts';

/** A QR code on a screen or a printed page, with what it leads to in words for whoever can't see it. */
export function QrMark({ says, label }: { says: string; label: string }) {
  const { modules, path } = qrShape(says);
  return (
    <svg viewBox={`0 0 ${modules} ${modules}`} className="size-24 bg-white" role="img" aria-label={label} shapeRendering="crispEdges">
      <path d={path} fill="#000" />
    </svg>
  );
}
