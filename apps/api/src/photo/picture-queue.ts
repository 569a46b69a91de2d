import { DomainError } from '@sprigline/domain';

/**
 * Lets some works run at a time and some wait; whoever comes beyond that is sent away at once.
 * A picture takes a few hundred megabytes while it is unpacked, so a crowd must not do that together.
 */
export class PictureQueue {
  readonly #waiting: (() => void)[] = [];
  #running = 0;

  /**
   * @param atOnce works that run together, 1 or more
   * @param inLine works that may wait
   */
  constructor(private readonly atOnce: number, private readonly inLine: number) {}

  /** @throws DomainError `http/busy` when the line is full */
  async run<T>(work: () => Promise<T>): Promise<T> {
    if (this.#running >= this.atOnce) await this.#turn();
    else this.#running += 1;
    try {
      return await work();
    } finally {
      // The place is handed on, so nobody slips in between.
      const next = this.#waiting.shift();
      if (next) next();
      else this.#running -= 1;
    }
  }

  #turn(): Promise<void> {
    if (this.#waiting.length >= this.inLine) {
      throw new DomainError('http/busy', 'too many photos come in at once: nothing was kept, send it again in a minute', { retryAfterSeconds: 15 });
    }
    return new Promise((resolve) => this.#waiting.push(resolve));
  }
}
