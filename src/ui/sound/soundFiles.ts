import barbCrack from '../../../assets/sounds/barb-crack.wav';
import clickOff from '../../../assets/sounds/click-off.wav';
import clickOn from '../../../assets/sounds/click-on.wav';
import fusePop from '../../../assets/sounds/fuse-pop.wav';
import gurgle from '../../../assets/sounds/gurgle.wav';
import hiss from '../../../assets/sounds/hiss.wav';
import pump from '../../../assets/sounds/pump.wav';
import relay from '../../../assets/sounds/relay.wav';
import shellCrack from '../../../assets/sounds/shell-crack.wav';
import sizzle from '../../../assets/sounds/sizzle.wav';
import spark from '../../../assets/sounds/spark.wav';
import tone from '../../../assets/sounds/tone.wav';

/** Address of every sound file. `assets/sounds/make-sounds.ts` makes them. */
export const SOUND_FILES = {
  'click-on': clickOn,
  'click-off': clickOff,
  tone,
  hiss,
  pump,
  spark,
  'fuse-pop': fusePop,
  relay,
  'barb-crack': barbCrack,
  'shell-crack': shellCrack,
  gurgle,
  sizzle,
} as const;

export type SoundName = keyof typeof SOUND_FILES;
