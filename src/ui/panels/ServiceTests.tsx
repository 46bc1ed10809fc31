import type { RigId } from '../../sim/devices/BenchSurface.ts';
import { say } from '../../text/translate.ts';
import { keepUnits } from './keepUnits.ts';
import { SERVICE_OF_RIG } from './serviceOfRig.ts';

const groupsOf = (rig: RigId) => [
  { group: 'tools', tests: ['meter', 'pump'] } as const,
  { group: 'electric', tests: ['click', 'coil', 'sense', 'pullUp', 'drops', 'drag'] } as const,
  { group: 'vacuum', tests: SERVICE_OF_RIG[rig].vacuumTests } as const,
  { group: 'whole', tests: ['smoke', 'road'] } as const,
];

/** The standard tests, each with its limit; how it is done unfolds. */
export function ServiceTests({ rig }: { readonly rig: RigId }) {
  return (
    <>
      <p>{say('serviceTests.lead')}</p>
      {groupsOf(rig).map(({ group, tests }) => (
        <section key={group} class="tests">
          <h3>{say(`serviceTests.groups.${group}`)}</h3>
          {tests.map((test) => (
            <details key={test} class="service-test">
              <summary>
                <span class="test-title">{say(`serviceTests.tests.${test}.title`)}</span>
                <span class="test-good">
                  <b>{say('serviceTests.good')}</b> {keepUnits(say(`serviceTests.tests.${test}.good`))}
                </span>
              </summary>
              <p>{keepUnits(say(`serviceTests.tests.${test}.how`))}</p>
              <p class="quiet">
                {say('serviceTests.proves')}: {say(`serviceTests.tests.${test}.proves`)}
              </p>
            </details>
          ))}
        </section>
      ))}
    </>
  );
}
