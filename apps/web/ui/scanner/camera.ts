import type { CameraTrouble } from './scanner-words.ts';

/** A camera that is running. */
export interface Camera {
  readonly stop: () => void;
  /** Turns the lamp on and off; nothing where there is none. */
  readonly torch?: (isOn: boolean) => Promise<void>;
}

/** No camera, and why. */
export class NoCamera extends Error {
  override readonly name = 'NoCamera';
  constructor(readonly trouble: CameraTrouble) {
    super(trouble);
  }
}

/** Darker than a hand over the lens by day: 0 to 255. */
const BLACK = 6;

/**
 * Shows the camera that looks away from the person. A new stream each time, since one that was closed in haste may stay black.
 *
 * @throws NoCamera
 */
export async function openCamera(video: HTMLVideoElement): Promise<Camera> {
  // Over plain HTTP from another machine, browsers show no camera at all.
  if (!navigator.mediaDevices?.getUserMedia) throw new NoCamera('insecure');
  const stream = await navigator.mediaDevices.getUserMedia({ audio: false, video: { facingMode: { ideal: 'environment' }, width: { ideal: 1_280 }, height: { ideal: 720 } } }).catch((error: unknown) => {
    throw new NoCamera(troubleOf(error));
  });
  const [track] = stream.getVideoTracks();
  const stop = (): void => {
    for (const one of stream.getTracks()) one.stop();
    if (video.srcObject === stream) video.srcObject = null;
  };
  try {
    video.srcObject = stream;
    await video.play();
  } catch (error) {
    stop();
    throw new NoCamera(troubleOf(error));
  }
  const hasTorch = track?.getCapabilities !== undefined && 'torch' in track.getCapabilities();
  return hasTorch ? { stop, torch: (isOn) => track.applyConstraints({ advanced: [{ torch: isOn } as MediaTrackConstraintSet] }) } : { stop };
}

function troubleOf(error: unknown): CameraTrouble {
  const name = error instanceof Error ? error.name : '';
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'refused';
  return name === 'NotFoundError' || name === 'OverconstrainedError' ? 'none' : 'busy';
}

/** Whether nothing at all can be seen, as on a stream that came up black. */
export function isBlack(video: HTMLVideoElement): boolean {
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [16, 16];
  const ink = canvas.getContext('2d', { willReadFrequently: true });
  if (!ink || video.videoWidth === 0) return video.videoWidth === 0;
  ink.drawImage(video, 0, 0, 16, 16);
  const { data } = ink.getImageData(0, 0, 16, 16);
  return data.every((value, at) => at % 4 === 3 || value <= BLACK);
}
