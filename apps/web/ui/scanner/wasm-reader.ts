/**
 * Reads QR codes with ZXing, compiled to WebAssembly: where the browser has no reader of its own. A megabyte that is loaded
 * only when somebody scans, by a dynamic import of this file.
 */
import { prepareZXingModule, readBarcodes, ZXING_WASM_VERSION } from 'zxing-wasm/reader';
import type { CodeSeen } from './code-seen.ts';

// From our own address, where next.config.ts puts it; the library would ask a stranger’s server.
prepareZXingModule({ overrides: { locateFile: () => `/scan/reader-${ZXING_WASM_VERSION}.wasm` } });

/** @throws Error when the reader itself could not be loaded */
export async function readWithWasm(picture: ImageData): Promise<CodeSeen[]> {
  const found = await readBarcodes(picture, { formats: ['QRCode'], tryHarder: true, tryRotate: true, tryInvert: false, tryDownscale: true });
  return found
    .filter(({ isValid }) => isValid)
    .map(({ text, position }) => {
      const corners = [position.topLeft, position.topRight, position.bottomRight, position.bottomLeft];
      return { text, x: mean(corners.map(({ x }) => x)) / picture.width, y: mean(corners.map(({ y }) => y)) / picture.height };
    });
}

const mean = (all: readonly number[]): number => all.reduce((sum, one) => sum + one, 0) / all.length;
