const OFF = 'sprigline/quiet';

export const isQuiet = (): boolean => {
  try {
    return window.localStorage.getItem(OFF) !== null;
  } catch {
    return false;
  }
};

export function beQuiet(quiet: boolean): void {
  try {
    if (quiet) window.localStorage.setItem(OFF, 'yes');
    else window.localStorage.removeItem(OFF);
  } catch {
    // Without storage it is heard again next time.
  }
}

/** Two notes going up for what was kept, going down for what was taken back, one low for what was not. Hertz. */
const NOTES = { kept: [880, 1320], undone: [1320, 880], failed: [220] } as const;
const NOTE_S = 0.09;
const LOUDNESS = 0.2;

let context: AudioContext | undefined;

/** Says by ear what the eye may miss. Never the only sign, and silent where sound is off or unknown. */
export function chime(what: keyof typeof NOTES): void {
  if (isQuiet() || typeof AudioContext === 'undefined') return;
  try {
    context ??= new AudioContext();
    const { currentTime } = context;
    NOTES[what].forEach((hertz, nth) => note(context as AudioContext, hertz, currentTime + nth * NOTE_S));
  } catch {
    // A phone that cannot sound is a phone all the same.
  }
}

function note(on: AudioContext, hertz: number, from: number): void {
  const [tone, volume] = [on.createOscillator(), on.createGain()];
  tone.frequency.value = hertz;
  volume.gain.setValueAtTime(LOUDNESS, from);
  volume.gain.exponentialRampToValueAtTime(0.001, from + NOTE_S);
  tone.connect(volume).connect(on.destination);
  tone.start(from);
  tone.stop(from + NOTE_S);
}
