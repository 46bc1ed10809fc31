import type { RigId } from '../../sim/devices/BenchSurface.ts';
import { describeCode } from '../../text/describeCode.ts';
import { say } from '../../text/translate.ts';
import { SERVICE_OF_RIG } from './serviceOfRig.ts';

/** Generic texts of the codes this controller can set, and when it sets them. */
export function ServiceCodes({ rig }: { readonly rig: RigId }) {
  return (
    <>
      <p>{say('serviceMonitor.codesLead')}</p>
      <dl class="terms code-terms">
        {SERVICE_OF_RIG[rig].codes.map((code) => (
          <div key={code}>
            <dt class="code">{code}</dt>
            <dd>
              {describeCode(code)}
              <span class="line-hint">
                {say('serviceMonitor.setWhen')}: {say(`serviceMonitor.when.${code}`)}
              </span>
            </dd>
          </div>
        ))}
      </dl>
      <p class="quiet">{say('serviceMonitor.own')}</p>
    </>
  );
}
