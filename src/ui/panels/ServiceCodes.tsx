import { describeCode } from '../../text/describeCode.ts';
import { say } from '../../text/translate.ts';

const CODES = [
  'P0441',
  'P0442',
  'P0446',
  'P0455',
  'P0456',
  'P0457',
  'P2400',
  'P2401',
  'P2402',
  'P2404',
  'P2405',
  'P2406',
  'P2407',
] as const;

/** Generic texts of the codes this controller can set, and when it sets them. */
export function ServiceCodes() {
  return (
    <>
      <p>{say('serviceMonitor.codesLead')}</p>
      <dl class="terms code-terms">
        {CODES.map((code) => (
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
