import { Path, Svg } from '@react-pdf/renderer';
import { qrShape } from '../qr-shape.ts';

/** A QR code (ISO/IEC 18004) on paper; `size` in points, quiet zone included. */
export function QrCode({ says, size }: { says: string; size: number }) {
  const { modules, path } = qrShape(says);
  return (
    <Svg width={size} height={size} viewBox={`0 0 ${modules} ${modules}`}>
      <Path d={path} fill="#000" />
    </Svg>
  );
}
