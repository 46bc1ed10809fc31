import { say } from '../../text/translate.ts';
import { DashLamp } from './DashLamp.tsx';
import type { Desk } from './Desk.ts';

/** The lamp in the dash, as it can be seen through the open door. */
export function DashView({ desk }: { readonly desk: Desk }) {
  const { dashLamp, key } = desk.observation.value;
  const sentence = dashLamp ? 'dash.lit' : key === 'off' ? 'dash.keyOff' : 'dash.dark';
  return (
    <span class="dash" title={say(sentence)}>
      <DashLamp lit={dashLamp} />
      <span class="dash-words" aria-hidden="true">
        {say(dashLamp ? 'dash.shortLit' : 'dash.shortDark')}
      </span>
      <span class="visually-hidden">{say(sentence)}</span>
    </span>
  );
}
