import type { RigId } from '../../sim/devices/BenchSurface.ts';
import { CAVITIES } from '../../sim/devices/places.ts';
import { say } from '../../text/translate.ts';
import { CircuitDiagram } from './CircuitDiagram.tsx';
import { keepUnits } from './keepUnits.ts';
import { Lines } from './Lines.tsx';
import { SERVICE_OF_RIG } from './serviceOfRig.ts';

const VALUES = ['supply', 'driver', 'bias', 'coil', 'pull', 'sense'] as const;

/** Diagram, pinout, values and ports. */
export function ServiceCircuit({ rig }: { readonly rig: RigId }) {
  return (
    <>
      <h3>{say('service.diagram')}</h3>
      <CircuitDiagram coil={SERVICE_OF_RIG[rig].coil} />
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
                <span class="line-hint">{keepUnits(say(`service.pins.${cavity}.size`))}</span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="quiet">{say('service.letterLine')}</p>
      <h3>{say('service.values')}</h3>
      <Lines
        lines={[
          ...VALUES.map((id) => ({
            name: say(`service.valueLines.${id}.name`),
            value: say(`service.valueLines.${id}.value`),
            hint: say(`service.valueLines.${id}.hint`),
          })),
          { name: say('service.valueLines.most.name'), value: say('service.valueLines.most.value') },
        ]}
      />
      <h3>{say('service.ports')}</h3>
      <Lines
        lines={SERVICE_OF_RIG[rig].ports.map((id) => ({
          name: say(`service.portLines.${id}.name`),
          value: say(`service.portLines.${id}.value`),
          hint: say(`service.portLines.${id}.hint`),
        }))}
      />
      <h3>{say('service.how')}</h3>
      <p>{say('service.howText')}</p>
    </>
  );
}
