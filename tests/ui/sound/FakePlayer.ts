import type { SoundPlayer } from '../../../src/ui/sound/SoundPlayer.ts';

/** A player that writes down what it was asked, in order. */
export class FakePlayer implements SoundPlayer {
  readonly asked: string[] = [];
  allowed = true;
  /** Unlocking works only from when this is true. */
  touched = true;
  broken = false;

  unlock(): void {
    this.note('unlock');
    if (this.touched) this.allowed = true;
  }

  fetchRest(): void {
    this.note('fetch the rest');
  }

  play(name: string): void {
    this.note(`play ${name}`);
  }

  startLoop(name: string): void {
    this.note(`start ${name}`);
  }

  stopLoop(name: string): void {
    this.note(`stop ${name}`);
  }

  setVolume(volume: number): void {
    this.note(`volume ${volume}`);
  }

  setMuted(muted: boolean): void {
    this.note(`muted ${muted}`);
  }

  private note(line: string): void {
    if (this.broken) throw new Error('the sound card was pulled');
    this.asked.push(line);
  }
}
