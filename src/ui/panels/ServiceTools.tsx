import { has, say, type TextKey } from '../../text/translate.ts';
import { keepUnits } from './keepUnits.ts';
import { type Line, Lines } from './Lines.tsx';

const CAUTIONS = [
  'first',
  'tank',
  'unit',
  'smoke',
  'sparks',
  'sense',
  'plug',
  'ohms',
  'probe',
  'clamps',
] as const;

const SHEETS = [
  { sheet: 'meter', area: 'meterLines', lines: ['display', 'input', 'leads', 'milliamps', 'amps', 'tone'] },
  {
    sheet: 'accuracy',
    area: 'accuracyLines',
    lines: ['dc', 'ac', 'lowZ', 'ohms', 'diode', 'milliamps', 'amps'],
  },
  { sheet: 'vacuum', area: 'vacuumLines', lines: ['gauge', 'pump', 'jar', 'manometer', 'smoke'] },
  { sheet: 'others', area: 'otherLines', lines: ['jumper', 'supply', 'lamp', 'led'] },
] as const;

/** Cautions, and what the tools can do. */
export function ServiceTools() {
  return (
    <>
      <h3>{say('serviceTools.cautions')}</h3>
      <ul class="cautions">
        {CAUTIONS.map((id) => (
          <li key={id}>{keepUnits(say(`serviceTools.cautionLines.${id}`))}</li>
        ))}
      </ul>
      {SHEETS.map(({ sheet, area, lines }) => (
        <section key={sheet}>
          <h3>{say(`serviceTools.${sheet}`)}</h3>
          <Lines lines={lines.map((id) => lineOf(`serviceTools.${area}.${id}`))} />
        </section>
      ))}
    </>
  );
}

/** A line whose words stand under one key: name, value and, where there is one, a hint. */
function lineOf(key: string): Line {
  const hint = `${key}.hint`;
  const named = { name: say(`${key}.name` as TextKey), value: say(`${key}.value` as TextKey) };
  return has(hint) ? { ...named, hint: say(hint) } : named;
}
