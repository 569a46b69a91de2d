import { Injectable } from '@nestjs/common';

export interface Progress {
  done: number;
  readonly total: number;
}

/** How far the imports that this process writes have come. Lost with the process, as their transaction is. */
@Injectable()
export class ImportProgress {
  readonly #running = new Map<string, Progress>();

  of(importId: string): Progress | undefined {
    return this.#running.get(importId);
  }

  begin(importId: string, total: number): Progress {
    const progress = { done: 0, total };
    this.#running.set(importId, progress);
    return progress;
  }

  end(importId: string): void {
    this.#running.delete(importId);
  }
}
