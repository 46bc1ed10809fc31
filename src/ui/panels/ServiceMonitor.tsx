import type { RigId } from '../../sim/devices/BenchSurface.ts';
import { volume } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { SERVICE_OF_RIG } from './serviceOfRig.ts';

const PHASES = ['check', 'draw', 'hold', 'vent'] as const;
const COLUMNS = ['fuel', 'space', 'trip', 'small', 'pass'] as const;

/** The leak monitor: when it runs, what it does, its limits, and what follows for codes and lamp. */
export function ServiceMonitor({ rig }: { readonly rig: RigId }) {
  const { limits } = SERVICE_OF_RIG[rig];
  return (
    <>
      <h3>{say('serviceMonitor.enable')}</h3>
      <p>{say('serviceMonitor.enableText')}</p>
      <h3>{say('serviceMonitor.phases')}</h3>
      <dl class="terms">
        {PHASES.map((id) => (
          <div key={id}>
            <dt>{say(`serviceMonitor.phaseLines.${id}.name`)}</dt>
            <dd>{say(`serviceMonitor.phaseLines.${id}.value`)}</dd>
          </div>
        ))}
      </dl>
      <h3>{say('serviceMonitor.limits')}</h3>
      {limits !== null && (
        <table class="ruled limits">
          <thead>
            <tr>
              {COLUMNS.map((column) => (
                <th key={column} scope="col">
                  {say(`serviceMonitor.${column}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {limits.map(({ fuelPercent, litres, trip, small, pass }) => (
              <tr key={fuelPercent}>
                <th scope="row">{fuelPercent} %</th>
                <td data-label={say('serviceMonitor.space')}>{volume(litres)}</td>
                <td data-label={say('serviceMonitor.trip')}>{trip} s</td>
                <td data-label={say('serviceMonitor.small')}>{small} s</td>
                <td data-label={say('serviceMonitor.pass')}>{pass} s</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <p class="quiet">{say('serviceMonitor.limitsText')}</p>
      <h3>{say('serviceMonitor.trips')}</h3>
      <p>{say('serviceMonitor.tripsText')}</p>
    </>
  );
}
