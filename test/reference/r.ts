import { WebR } from 'webr';

/** R itself, compiled to WebAssembly: a witness that shares no line with us. */
export interface R {
  /** Runs R code that answers a vector of numbers. */
  numbers(code: string): Promise<number[]>;
  stop(): void;
}

export async function startR(): Promise<R> {
  const webR = new WebR();
  await webR.init();
  return {
    async numbers(code) {
      const answer = await webR.evalRRaw(code, 'number[]');
      // A missing value here is a fault of the question; it must not compare equal to anything.
      if (!answer.every(Number.isFinite)) throw new Error(`R has no number for: ${code}`);
      return answer;
    },
    stop: () => webR.close(),
  };
}

/** A vector as R writes it; JavaScript's shortest form reads back as the same double. */
export const vector = (numbers: readonly number[]): string => `c(${numbers.join(', ')})`;
