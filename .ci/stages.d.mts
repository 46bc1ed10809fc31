import type { Count } from '../tests/support/count/counts.mjs';

type Write = (chunk: string | Uint8Array) => void;

export class HeldOutput {
  constructor(write: Write);
  take(chunk: string | Uint8Array): void;
  release(): void;
}

export class Stages {
  constructor(write: Write);
  readonly counts: readonly Count[];
  inTurn(name: string, work: () => Promise<Count>): Promise<Count>;
  beside(name: string, work: (take: Write) => Promise<Count>): () => Promise<Count>;
}
