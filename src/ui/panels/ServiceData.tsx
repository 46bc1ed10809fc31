import { CAVITIES } from '../../sim/devices/places.ts';
import { say } from '../../text/translate.ts';
import { CircuitDiagram } from './CircuitDiagram.tsx';

const TESTS = ['click', 'coil', 'sense', 'trip', 'hold', 'reset', 'drops'] as const;
const HOW_TO = ['meter', 'pump', 'click', 'vacuum', 'loaded', 'rated'] as const;

/** Circuit, pinout, limits and test descriptions of the rig. */
export function ServiceData() {
  return (
    <div class="service">
      <p class="quiet">{say('service.invented')}</p>
      <h3>{say('service.diagram')}</h3>
      <CircuitDiagram />
      <h3>{say('service.pinout')}</h3>
      <table class="ruled">
        <thead>
          <tr>
            <th scope="col">{say('service.cavity')}</th>
            <th scope="col">{say('service.function')}</th>
            <th scope="col">{say('service.wire')}</th>
          </tr>
        </thead>
        <tbody>
          {CAVITIES.map((cavity) => (
            <tr key={cavity}>
              <th scope="row">{cavity}</th>
              <td>{say(`service.pins.${cavity}.function`)}</td>
              <td>
                <b>{say(`service.pins.${cavity}.wire`)}</b>
                <br />
                {say(`service.pins.${cavity}.size`)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <h3>{say('service.limits')}</h3>
      <table class="ruled">
        <thead>
          <tr>
            <th scope="col">{say('service.test')}</th>
            <th scope="col">{say('service.good')}</th>
          </tr>
        </thead>
        <tbody>
          {TESTS.map((test) => (
            <tr key={test}>
              <td>{say(`service.tests.${test}.test`)}</td>
              <td>
                <b>{say(`service.tests.${test}.good`)}</b>
                <br />
                <span class="quiet">
                  {say('service.proves')}: {say(`service.tests.${test}.proves`)}
                </span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <h3>{say('service.how')}</h3>
      {HOW_TO.map((test) => (
        <details key={test}>
          <summary>{say(`service.howTo.${test}.title`)}</summary>
          <p>{say(`service.howTo.${test}.text`)}</p>
        </details>
      ))}
    </div>
  );
}
