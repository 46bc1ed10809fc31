import { fnv1a32 } from './hash.ts';

/**
 * A seeded stream of uniform numbers (small fast counting generator, 32-bit words).
 * One stream for one purpose: `Random.of(seed, 'tolerances')` never disturbs `Random.of(seed, 'meter-noise')`.
 */
export class Random {
  private constructor(
    private a: number,
    private b: number,
    private c: number,
    private counter: number,
  ) {}

  /** A stream for one purpose of one seed. */
  static of(seed: string, purpose: string): Random {
    const random = new Random(
      fnv1a32(`${seed}\u0000${purpose}\u0000a`),
      fnv1a32(`${seed}\u0000${purpose}\u0000b`),
      fnv1a32(`${seed}\u0000${purpose}\u0000c`),
      1,
    );
    for (let i = 0; i < 12; i++) random.word();
    return random;
  }

  static restore(state: readonly number[]): Random {
    const [a = 0, b = 0, c = 0, counter = 1] = state;
    return new Random(a, b, c, counter);
  }

  get state(): readonly number[] {
    return [this.a, this.b, this.c, this.counter];
  }

  /** The next 32-bit word. */
  word(): number {
    const t = (((this.a + this.b) | 0) + this.counter) | 0;
    this.counter = (this.counter + 1) | 0;
    this.a = this.b ^ (this.b >>> 9);
    this.b = (this.c + (this.c << 3)) | 0;
    this.c = ((this.c << 21) | (this.c >>> 11)) + t;
    this.c |= 0;
    return t >>> 0;
  }

  /** Uniform in [0, 1). */
  next(): number {
    return this.word() / 4294967296;
  }

  /** Uniform in [-1, 1). */
  symmetric(): number {
    return this.next() * 2 - 1;
  }
}
