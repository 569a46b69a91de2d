/** Kept on this device: whether a read code makes a sound. */
const KEPT_AS = 'scan-sound';

export function isSoundOn(): boolean {
  try {
    return localStorage.getItem(KEPT_AS) !== 'off';
  } catch {
    return true;
  }
}

export function keepSound(isOn: boolean): void {
  try {
    localStorage.setItem(KEPT_AS, isOn ? 'on' : 'off');
  } catch {
    // A private window: until the page is left.
  }
}

let audio: AudioContext | undefined;

/** A short tone made on the spot: high for taken, low and longer for refused. Silence where a browser makes no sound. */
export function beep(isGood: boolean): void {
  try {
    audio ??= new AudioContext();
    void audio.resume().catch(() => undefined);
    const [tone, loud, from] = [audio.createOscillator(), audio.createGain(), audio.currentTime];
    const until = from + (isGood ? 0.12 : 0.35);
    tone.type = isGood ? 'sine' : 'square';
    tone.frequency.value = isGood ? 1_320 : 220;
    loud.gain.setValueAtTime(isGood ? 0.3 : 0.12, from);
    // Down to nothing, so that it ends without a click.
    loud.gain.exponentialRampToValueAtTime(0.001, until);
    tone.connect(loud).connect(audio.destination);
    tone.start(from);
    tone.stop(until);
  } catch {
    // The large change on the screen says the same.
  }
}
