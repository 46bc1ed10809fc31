/** Seven segments as strokes in a box of 10 by 18, and the digits that are shown. */
const STROKES = {
  a: 'M1 0h8',
  b: 'M10 1v7',
  c: 'M10 10v7',
  d: 'M1 18h8',
  e: 'M0 10v7',
  f: 'M0 1v7',
  g: 'M1 9h8',
};
const READING = [
  { at: 0, strokes: ['a', 'b', 'c', 'd', 'e', 'f', 'g'] },
  { at: 22, strokes: ['a', 'b', 'c', 'd', 'f', 'g'] },
  { at: 40, strokes: ['a', 'b', 'd', 'e', 'g'] },
] as const;

const LEADS = { black: 'M322 146q-40 26-46-12t-10-56', red: 'M356 146q-60 52-92 10t4-94' };

/** A small still of the bench, for the eye only: the hand pump on the unit, and the meter behind its plug. */
export function BenchStill() {
  return (
    <svg class="bench-still" viewBox="0 0 400 184" aria-hidden="true">
      <path class="still-hose-edge" d="M60 161h84q44 0 44-34v-10" />
      <path class="still-hose" d="M60 161h84q44 0 44-34v-10" />
      <rect class="still-plum" x="94" y="54" width="16" height="20" rx="3" />
      <path class="still-light" d="M110 57h18v14h-18zM110 88h18v14h-18zM181 114h14v10h-14z" />
      <rect class="still-light" x="134" y="18" width="86" height="28" rx="4" />
      <path class="still-line" d="M142 32h7M205 32h7" />
      <rect class="still-steel" x="128" y="44" width="98" height="70" rx="5" />
      <path class="still-line" d="M128 79h98" />
      <rect class="still-dark" x="224" y="54" width="10" height="32" />
      <path class="still-wire" d="M252 62h8q8 0 8-8V-4M252 70h12q13 0 13-13V-4M252 78h16q18 0 18-18V-4" />
      <rect class="still-plum" x="232" y="50" width="20" height="40" rx="3" />
      <rect class="still-steel" x="42" y="128" width="12" height="28" />
      <circle class="still-cream" cx="48" cy="102" r="36" />
      <path class="still-line" d="M27 123l4-4M18 102h6M27 81l4 4M48 72v6M69 81l-4 4M78 102h-6M69 123l-4-4" />
      <path class="still-needle" d="M48 102l13-18" />
      <circle class="still-ink" cx="48" cy="102" r="3.5" />
      <circle class="still-light" cx="48" cy="161" r="9" />
      <rect class="still-sage" x="66" y="150" width="56" height="22" rx="4" />
      <path class="still-light" d="M122 157h-3M8 157h31v8h-31z" />
      <rect class="still-sage" x="2" y="145" width="9" height="32" rx="3" />
      <rect class="still-steel" x="292" y="46" width="104" height="130" rx="9" />
      <rect class="still-cream" x="298" y="52" width="92" height="118" rx="6" />
      <rect class="still-lcd" x="306" y="60" width="76" height="40" rx="4" />
      <g class="still-digits">
        {READING.map(({ at, strokes }) => (
          <path
            key={at}
            transform={`translate(${318 + at} 71) skewX(-4)`}
            d={strokes.map((name) => STROKES[name]).join('')}
          />
        ))}
        <path d="M333 89h.1" />
      </g>
      <path class="still-line" d="M306 110h20M334 110h20M362 110h20" />
      <circle class="still-light" cx="322" cy="146" r="9" />
      <circle class="still-light" cx="356" cy="146" r="9" />
      <g class="still-leads">
        {(['black', 'red'] as const).flatMap((lead) =>
          ['still-edge', 'still-casing', `still-${lead}`].map((layer) => (
            <path key={lead + layer} class={layer} d={LEADS[lead]} />
          )),
        )}
      </g>
    </svg>
  );
}
