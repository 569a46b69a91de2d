/** Part of what browsers that read codes by themselves have, in pages and in workers (Shape Detection, Accelerated Shape Detection in Images). */
interface KnowsFormats {
  getSupportedFormats(): Promise<readonly string[]>;
}

/** Whether the browser reads QR codes by itself: some have a reader that knows none. @param scope of a page or of a worker */
export async function readsCodesItself(scope: object): Promise<boolean> {
  try {
    return (await (scope as { BarcodeDetector?: KnowsFormats }).BarcodeDetector?.getSupportedFormats())?.includes('qr_code') === true;
  } catch {
    return false;
  }
}
