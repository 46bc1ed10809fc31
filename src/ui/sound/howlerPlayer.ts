import { Howl, Howler } from 'howler';
import type { SoundPlayer } from './SoundPlayer.ts';
import { SOUND_FILES, type SoundName } from './soundFiles.ts';

/** The lightest of what a hand may cause with its first touch. The rest, ten times as much, is fetched once the bench is in use. */
const AT_ONCE: readonly SoundName[] = ['click-on', 'relay', 'spark', 'tone'];

/**
 * Loads the sounds of a first touch; the others when they are asked for. Errors: rejects when the browser
 * has no sound or a file cannot be had or decoded. Of the others one that cannot be had stays silent.
 */
export async function loadHowlerPlayer(): Promise<SoundPlayer> {
  if (Howler.noAudio) throw new Error('no sound in this browser');
  // Howler would put the sound to sleep after half a minute of quiet and swallow the start of the next click.
  Howler.autoSuspend = false;

  const howls = new Map<SoundName, Howl>();
  const load = (name: SoundName) =>
    new Promise<void>((resolve, reject) => {
      const howl: Howl = new Howl({
        src: SOUND_FILES[name],
        format: ['wav'],
        loop: name === 'tone',
        onload: () => {
          howls.set(name, howl);
          resolve();
        },
        onloaderror: (_, error) => reject(new Error(`${name}: ${String(error)}`)),
      });
    });
  await Promise.all(AT_ONCE.map(load));
  let all = false;
  const fetchRest = (): void => {
    if (all) return;
    all = true;
    for (const name of Object.keys(SOUND_FILES) as SoundName[]) {
      if (!AT_ONCE.includes(name)) load(name).catch(() => undefined);
    }
  };

  return {
    fetchRest,
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
