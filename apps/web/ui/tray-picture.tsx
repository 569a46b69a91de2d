import { boxOfRow, type Frame, type TrayRow, WHOLE_PICTURE } from '../lib/tray-rows.ts';
import { RowMap } from './row-map.tsx';

/** Without a picture, a row is drawn so high and a tray so wide. */
const [ROW_HIGH, TRAY_WIDE] = [60, 480];

interface TrayPictureProps {
  readonly rows: readonly TrayRow<{ readonly label: string | null }>[];
  /** The portrait under it, with where the tray lies in it. */
  readonly portrait?: { readonly src: string; readonly width: number; readonly height: number; readonly frame: Frame | null } | undefined;
  readonly marked?: number | undefined;
}

/** A tray from above, its rows outlined and named by number and label. */
export function TrayPicture({ rows, portrait, marked }: TrayPictureProps) {
  const frame = portrait?.frame ?? WHOLE_PICTURE;
  const outlines = rows.map(({ row, batches }) => ({
    key: String(row), name: [row, ...batches.map(({ label }) => label ?? '')].join(' ').trim(), box: boxOfRow(frame, row, rows.length), isMarked: row === marked,
  }));
  return <RowMap width={portrait?.width ?? TRAY_WIDE} height={portrait?.height ?? ROW_HIGH * rows.length} picture={portrait?.src} outlines={outlines} />;
}
