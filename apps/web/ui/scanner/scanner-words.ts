/** Everything the scanner says. `{code}` and `{host}` stand for what was read. */
export interface ScannerWords {
  readonly title: string;
  readonly typed: string;
  readonly typedHint: string;
  readonly go: string;
  readonly camera: string;
  readonly stop: string;
  readonly torchOn: string;
  readonly torchOff: string;
  readonly file: string;
  readonly sound: string;
  readonly wedge: string;
  readonly aim: string;
  readonly starting: string;
  readonly working: string;
  readonly rested: string;
  readonly troubles: Readonly<Record<CameraTrouble, string>>;
  readonly noReader: string;
  readonly noCodeInFile: string;
  readonly notAPicture: string;
  readonly elsewhere: string;
  readonly noLabel: string;
  readonly mistyped: string;
  /** The code was read, and could not be handed on. */
  readonly failed: string;
}

/** Why there is no picture: the way of typing is there all the same. */
export type CameraTrouble = 'insecure' | 'refused' | 'none' | 'busy' | 'black';

/** Puts what was read into a sentence. */
export const filled = (words: string, told: Readonly<Record<string, string>>): string => words.replace(/\{(\w+)\}/g, (whole, name: string) => told[name] ?? whole);
