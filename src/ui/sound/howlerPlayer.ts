import type { Howl } from 'howler';
import type { SoundPlayer } from './SoundPlayer.ts';
import { SOUND_FILES, type SoundName } from './soundFiles.ts';

/**
 * Loads howler and every sound. Errors: rejects when the browser has no sound or a file cannot be had or decoded.
 */
export async function loadHowlerPlayer(): Promise<SoundPlayer> {
  const { Howl, Howler } = await import('howler');
  if (Howler.noAudio) throw new Error('no sound in this browser');
  // Howler would put the sound to sleep after half a minute of quiet and swallow the start of the next click.
  Howler.autoSuspend = false;

  const load = (name: SoundName) =>
    new Promise<[SoundName, Howl]>((resolve, reject) => {
      const howl: Howl = new Howl({
        src: SOUND_FILES[name],
        format: ['wav'],
        loop: name === 'tone',
        onload: () => resolve([name, howl]),
        onloaderror: (_, error) => reject(new Error(`${name}: ${String(error)}`)),
      });
    });
  const names = Object.keys(SOUND_FILES) as SoundName[];
  const howls = new Map(await Promise.all(names.map(load)));

  return {
    get allowed() {
      return !Howler.usingWebAudio || Howler.ctx?.state === 'running';
    },
    unlock() {
      // A refusal is no error: the next touch asks again.
      void Howler.ctx?.resume().catch(() => undefined);
    },
    play: (name) => void howls.get(name)?.play(),
    startLoop(name) {
      const howl = howls.get(name);
      if (howl !== undefined && !howl.playing()) howl.play();
    },
    stopLoop: (name) => void howls.get(name)?.stop(),
    setVolume: (volume) => void Howler.volume(volume),
    setMuted: (muted) => void Howler.mute(muted),
  };
}
