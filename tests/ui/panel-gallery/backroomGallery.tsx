import { computed, signal } from '@preact/signals';
import { render } from 'preact';
import '../../../assets/fonts/fonts.css';
import '../../../src/text/wholeEnglish.ts';
import '../../../src/text/backRoomEnglish.ts';
import '../../../src/ui/panels/styles.css';
import { ProofClient } from '../../../src/app/backroom/proof/ProofClient.ts';
import { ReadingsClient } from '../../../src/app/backroom/proof/ReadingsClient.ts';
import { backRoomScreen } from '../../../src/text/es/backRoomScreen.ts';
import { catalogue } from '../../../src/text/es/catalogue.ts';
import { addLanguage, setLanguage } from '../../../src/text/translate.ts';
import { setDisplayUnits } from '../../../src/text/units.ts';
import { ProofPanel } from '../../../src/ui/backroom/proof/ProofPanel.tsx';
import { FaultReadings } from '../../../src/ui/backroom/readings/FaultReadings.tsx';
import { cssProperties } from '../../../src/ui/theme/cssProperties.ts';
import type { ThemeName } from '../../../src/ui/theme/tokens.ts';

/**
 * Proof and readings of a draft beside its text and one fault's slider: `?job=silent-on-command&fault=capsule-torn&theme=shop-floor
 * &language=es&units=metric`. The text may be changed.
 */
const query = new URLSearchParams(location.search);
const theme = (query.get('theme') ?? 'paper') as ThemeName;
for (const [property, value] of Object.entries(cssProperties(theme))) {
  document.documentElement.style.setProperty(property, value);
}
document.documentElement.dataset['theme'] = theme;
document.documentElement.style.colorScheme = theme === 'shop-floor' ? 'dark' : 'light';
setDisplayUnits(query.get('units') === 'metric' ? 'metric' : 'us');
if (query.get('language') === 'es') {
  addLanguage('es-US', { ...catalogue, ...backRoomScreen });
  await setLanguage('es-US');
}

const files = import.meta.glob<string>('../../../scenarios/*.yaml', { query: '?raw', import: 'default' });
const job = query.get('job') ?? 'silent-on-command';
const text = signal((await files[`../../../scenarios/${job}.yaml`]?.()) ?? '');
const fault = query.get('fault') ?? 'capsule-torn';
const severity = signal(Number(query.get('severity') ?? 0.5));
const went = signal('');

const proof = new ProofClient();
const readings = new ReadingsClient();
text.subscribe((now) => proof.prove(now, 'draft.yaml'));
const environment = { ambientC: 20, altitudeM: 200, fuelLevel: 0.5 };
severity.subscribe((now) =>
  readings.read({ environment, seed: job, faults: now < 0 ? [] : [{ fault, severity: now }] }),
);
const proofKind = computed(() => proof.state.value.kind);

function Gallery() {
  return (
    <main class="board" data-proof={proofKind.value} data-readings={readings.state.value.kind}>
      <ProofPanel
        state={proof.state}
        goTo={(place) => {
          went.value = place.kind === 'field' ? place.path : String(place.line);
        }}
        onMend={({ path, value }) => {
          went.value = `${path} ${JSON.stringify(value)}`;
        }}
        again={() => proof.again()}
      />
      <output>{went}</output>
      <textarea
        aria-label="draft"
        rows={12}
        style={{ width: '100%' }}
        value={text.value}
        onInput={({ currentTarget }) => {
          text.value = currentTarget.value;
        }}
      />
      <input
        aria-label="severity"
        type="range"
        min="0"
        max="1"
        step="0.01"
        value={severity.value}
        onInput={({ currentTarget }) => {
          severity.value = Number(currentTarget.value);
        }}
      />
      <FaultReadings state={readings.state} again={() => readings.again()} />
    </main>
  );
}

const root = document.getElementById('app');
if (root !== null) render(<Gallery />, root);
document.title = 'ready';
