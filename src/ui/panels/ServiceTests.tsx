import { say } from '../../text/translate.ts';
import { keepUnits } from './keepUnits.ts';

const TEST_GROUPS = [
  { group: 'tools', tests: ['meter', 'pump'] },
  { group: 'electric', tests: ['click', 'coil', 'sense', 'pullUp', 'drops', 'drag'] },
  { group: 'vacuum', tests: ['trip', 'hold', 'reset', 'points', 'engine', 'vent', 'stroke'] },
  { group: 'whole', tests: ['smoke', 'road'] },
] as const;

/** The standard tests, each with its limit; how it is done unfolds. */
export function ServiceTests() {
  return (
    <>
      <p>{say('serviceTests.lead')}</p>
      {TEST_GROUPS.map(({ group, tests }) => (
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
