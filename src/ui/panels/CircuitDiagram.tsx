import type { ComponentChildren } from 'preact';
import { say } from '../../text/translate.ts';

/**
 * The rig's circuit in the style of IEC 60617: supply at the left, controller above, unit at the right, ground below. Wires
 * are named by their IEC 60757 letters, cavities of the plug are numbers in rings. Drawn for a narrow column: its letters
 * stay readable at 310 pixels.
 */
export function CircuitDiagram({ coil }: { readonly coil: string }) {
  return (
    <svg class="circuit" viewBox="0 0 330 424" role="img" aria-label={say('service.diagramLabel')}>
      <g class="part">
        <rect x="100" y="32" width="212" height="98" class="box" />
        <rect x="164" y="216" width="148" height="100" class="box dashed" />
      </g>
      <Wires />
      <Parts />
      <Words coil={coil} />
    </svg>
  );
}

function Wires() {
  return (
    <g class="wire">
      {/* Battery through key and fuse into the driver. */}
      <path d="M40 296 V262 M40 232 V196 M40 160 V76 H130" />
      {/* Driver to cavity 1 and the coil. */}
      <path d="M168 76 H196 V190 M196 210 V232 M196 280 V300" />
      {/* Pull-up to cavity 3 and the switch. */}
      <path d="M270 49 V58 M270 96 V190 M270 210 V242 M270 272 V300" />
      {/* Coil and switch to cavity 2, over the splice to the stud, and the battery's own. */}
      <path d="M196 300 H270 M233 300 V322 M233 342 V388 M40 320 V402 H233 V388" />
    </g>
  );
}

function Parts() {
  return (
    <g class="part">
      {/* Battery. */}
      <path d="M28 296 H52 M34 303 H46 M28 312 H52 M34 320 H46" />
      {/* Key. */}
      <circle cx="40" cy="262" r="3" class="dot" />
      <circle cx="40" cy="232" r="3" class="dot" />
      <path d="M40 262 L54 238" />
      {/* Fuse. */}
      <rect x="32" y="160" width="16" height="36" class="box" />
      <path d="M40 160 V196" />
      {/* Driver: a switch that is no contact. */}
      <rect x="130" y="64" width="38" height="24" class="box" />
      <path d="M138 82 L160 70" />
      {/* Pull-up, from a supply of the controller's own. */}
      <circle cx="270" cy="45" r="4" class="box" />
      <rect x="263" y="58" width="14" height="38" class="box" />
      {/* Coil with its plunger's stroke. */}
      <rect x="186" y="232" width="20" height="48" class="box" />
      <path d="M186 272 L206 240" />
      {/* Vacuum switch. */}
      <circle cx="270" cy="242" r="3" class="dot" />
      <circle cx="270" cy="272" r="3" class="dot" />
      <path d="M270 272 L284 249" />
      {/* Splice and stud. */}
      <circle cx="233" cy="366" r="4" class="dot" />
      <circle cx="233" cy="402" r="4" class="dot" />
      <path d="M233 402 H262 M262 392 V412 M268 396 V408 M274 400 V404" />
      {/* Cavities of the plug. */}
      <circle cx="196" cy="200" r="10" class="box" />
      <circle cx="270" cy="200" r="10" class="box" />
      <circle cx="233" cy="332" r="10" class="box" />
    </g>
  );
}

function Words({ coil }: { readonly coil: string }) {
  return (
    <g>
      <Word x={14} y={300} text="+" />
      <Word x={60} y={312} text={say('service.labels.battery')} />
      <Word x={62} y={252} text={say('service.labels.key')} />
      <Word x={56} y={183} text={say('service.labels.fuse')} />
      <Word x={100} y={24} text={say('service.labels.controller')} />
      <Word x={112} y={106} text={say('service.labels.driver')} />
      <Word x={260} y={50} text="9.1 V" end />
      <Word x={257} y={82} text="2.2 kΩ" end />
      <Word x={204} y={152} text="PK/BK" strong />
      <Word x={204} y={169} text={say('service.labels.feed')} />
      <Word x={277} y={152} text="GY/BU" strong />
      <Word x={277} y={169} text={say('service.labels.sense')} />
      <Word x={192.5} y={204.5} text="1" strong />
      <Word x={266.5} y={204.5} text="3" strong />
      <Word x={229.5} y={336.5} text="2" strong />
      <Word x={212} y={254} text={say('service.labels.coil')} />
      <Word x={212} y={270} text={coil} />
      <Word x={164} y={333} text={say('service.labels.unit')} />
      <Word x={263} y={292} text={say('service.labels.switch')} end />
      <Word x={250} y={344} text="BN" strong />
      <Word x={250} y={361} text={say('service.labels.ground')} />
      <Word x={223} y={371} text={say('service.labels.splice')} end />
      <Word x={223} y={396} text={say('service.labels.stud')} end />
    </g>
  );
}

interface WordProps {
  readonly x: number;
  readonly y: number;
  readonly text: ComponentChildren;
  readonly strong?: boolean;
  /** Ends at its place, and does not begin there. */
  readonly end?: boolean;
}

function Word({ x, y, text, strong, end }: WordProps) {
  return (
    <text x={x} y={y} class={strong ? 'code' : ''} text-anchor={end ? 'end' : 'start'}>
      {text}
    </text>
  );
}
