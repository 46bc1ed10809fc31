import { type Signal, useSignal } from '@preact/signals';
import type { RigId } from '../../sim/devices/BenchSurface.ts';
import { say } from '../../text/translate.ts';
import { Pages } from './Pages.tsx';
import { ServiceCircuit } from './ServiceCircuit.tsx';
import { ServiceCodes } from './ServiceCodes.tsx';
import { ServiceMonitor } from './ServiceMonitor.tsx';
import { ServiceTests } from './ServiceTests.tsx';
import { ServiceTools } from './ServiceTools.tsx';

const SERVICE_PAGES = ['circuit', 'tests', 'monitor', 'codes', 'tools'] as const;
export type ServicePage = (typeof SERVICE_PAGES)[number];

/** Circuit, tests, monitor, codes and tools of the rig: facts, and nothing that tells the fault. */
export function ServiceData({ rig, page }: { readonly rig: RigId; readonly page?: Signal<ServicePage> }) {
  const own = useSignal<ServicePage>('circuit');
  const shown = page ?? own;
  return (
    <div class="service">
      <p class="quiet service-first">{say('service.invented')}</p>
      <Pages
        name="service"
        label={say('service.pagesLabel')}
        pages={SERVICE_PAGES.map((id) => ({ id, label: say(`service.pages.${id}`) }))}
        page={shown.value}
        onPage={(next) => {
          shown.value = next;
        }}
      >
        {pageOf(shown.value, rig)}
      </Pages>
    </div>
  );
}

function pageOf(page: ServicePage, rig: RigId) {
  switch (page) {
    case 'circuit':
      return <ServiceCircuit rig={rig} />;
    case 'tests':
      return <ServiceTests rig={rig} />;
    case 'monitor':
      return <ServiceMonitor rig={rig} />;
    case 'codes':
      return <ServiceCodes rig={rig} />;
    case 'tools':
      return <ServiceTools />;
  }
}
