import type { CodeSeen } from './code-seen.ts';
import { readsCodesItself } from './reads-codes-itself.ts';

/** Of what browsers that read codes by themselves offer. */
type NativeDetectors = new (options: { formats: readonly string[] }) => {
  detect(picture: HTMLVideoElement | ImageBitmap): Promise<readonly { readonly rawValue: string; readonly boundingBox: DOMRectReadOnly }[]>;
};

/** Reads the QR codes in one picture. */
export type CodeReader = (picture: HTMLVideoElement | ImageBitmap) => Promise<CodeSeen[]>;

/** Wide enough for a small label at arm’s length, and small enough for a cheap phone. */
const WIDEST = { video: 1_024, file: 2_048 };

/** The browser’s own reader where it knows QR codes; else ours, which is loaded now. */
export async function codeReader(): Promise<CodeReader> {
  const native = await nativeReader();
  if (!native) return wasmReader();
  return async (picture) => {
    try {
      return await native(picture);
    } catch {
      // It is there and does not work, such as on a phone without the maker’s services: ours takes over.
      return (await wasmReader())(picture);
    }
  };
}

async function nativeReader(): Promise<CodeReader | undefined> {
  const Detectors = (globalThis as { BarcodeDetector?: NativeDetectors }).BarcodeDetector;
  if (!Detectors || !(await readsCodesItself(globalThis))) return undefined;
  try {
    const detector = new Detectors({ formats: ['qr_code'] });
    return async (picture) => {
      const { width, height } = sizeOf(picture);
      return (await detector.detect(picture)).map(({ rawValue, boundingBox: box }) => ({ text: rawValue, x: (box.x + box.width / 2) / width, y: (box.y + box.height / 2) / height }));
    };
  } catch {
    return undefined;
  }
}

async function wasmReader(): Promise<CodeReader> {
  const { readWithWasm } = await import('./wasm-reader.ts');
  const canvas = document.createElement('canvas');
  return async (picture) => {
    const { width, height } = sizeOf(picture);
    if (width === 0 || height === 0) return [];
    const scale = Math.min(1, (picture instanceof ImageBitmap ? WIDEST.file : WIDEST.video) / Math.max(width, height));
    canvas.width = Math.round(width * scale);
    canvas.height = Math.round(height * scale);
    const ink = canvas.getContext('2d', { willReadFrequently: true });
    if (!ink) return [];
    ink.drawImage(picture, 0, 0, canvas.width, canvas.height);
    return readWithWasm(ink.getImageData(0, 0, canvas.width, canvas.height));
  };
}

function sizeOf(picture: HTMLVideoElement | ImageBitmap): { readonly width: number; readonly height: number } {
  return picture instanceof ImageBitmap ? picture : { width: picture.videoWidth, height: picture.videoHeight };
}
