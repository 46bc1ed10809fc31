import { useSignal } from '@preact/signals';
import { say } from '../../text/translate.ts';
import { Choice } from './Choice.tsx';
import { Dialog } from './Dialog.tsx';
import type { Shop, UserSettings } from './Shop.ts';
import { ShortcutsDialog } from './ShortcutsDialog.tsx';

const THEMES = ['auto', 'light', 'dark', 'contrast'] as const;
const LANGUAGES = ['en', 'es'] as const;
const UNITS = ['us', 'metric'] as const;
const ANNOUNCE = ['off', 'settled', 'continuous'] as const;

interface SettingsDialogProps {
  readonly shop: Shop;
  /** The browser gives no sound, or none that can be played. */
  readonly soundLost: boolean;
  readonly onClose: () => void;
}

/** Language, units, colours, sound, speech and shortcuts of this device. */
export function SettingsDialog({ shop, soundLost, onClose }: SettingsDialogProps) {
  const settings = shop.settings.value;
  const keys = useSignal(false);
  const set = (change: Partial<UserSettings>): void => {
    shop.settings.value = { ...settings, ...change };
  };
  return (
    <Dialog title={say('settings.title')} onClose={onClose}>
      <Choice
        label={say('settings.language')}
        value={settings.language}
        options={LANGUAGES.map((value) => ({
          value,
          label: say(`settings.languages.${value}`),
          lang: value,
        }))}
        onChoose={(language) => set({ language })}
      />
      <Choice
        label={say('settings.units')}
        value={settings.units}
        options={UNITS.map((value) => ({ value, label: say(`settings.unitSystems.${value}`) }))}
        onChoose={(units) => set({ units })}
      />
      <Choice
        label={say('settings.theme')}
        value={settings.theme}
        options={THEMES.map((value) => ({ value, label: say(`settings.themes.${value}`) }))}
        onChoose={(theme) => set({ theme })}
      />
      <Choice
        label={say('settings.announce')}
        value={settings.announce}
        options={ANNOUNCE.map((value) => ({ value, label: say(`settings.announceModes.${value}`) }))}
        onChoose={(announce) => set({ announce })}
      />
      <Choice
        label={say('settings.letters')}
        value={settings.letterShortcuts ? 'on' : 'off'}
        options={(['on', 'off'] as const).map((value) => ({ value, label: say(`settings.${value}`) }))}
        onChoose={(value) => set({ letterShortcuts: value === 'on' })}
      />
      <p>
        <button type="button" onClick={() => (keys.value = true)}>
          {say('settings.keys')}
        </button>
      </p>
      {keys.value && (
        <ShortcutsDialog letters={settings.letterShortcuts} onClose={() => (keys.value = false)} />
      )}
      <Choice
        label={say('settings.sound')}
        value={settings.muted ? 'off' : 'on'}
        options={(['on', 'off'] as const).map((value) => ({ value, label: say(`settings.${value}`) }))}
        onChoose={(value) => set({ muted: value === 'off' })}
      />
      {soundLost && <p>{say('settings.soundLost')}</p>}
      <label class="volume">
        {say('settings.volume')}
        <input
          type="range"
          min={0}
          max={1}
          step={0.05}
          value={settings.volume}
          onInput={(event) => set({ volume: Number(event.currentTarget.value) })}
        />
      </label>
    </Dialog>
  );
}
