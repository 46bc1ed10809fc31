import type { ComponentChildren } from 'preact';
import { say } from '../../text/translate.ts';

/**
 * The rig's circuit in the style of IEC 60617: supply at the left, controller in the middle, unit at the right, ground below.
 * Wires are named by their IEC 60757 letters.
 */
export function CircuitDiagram() {
  return (
    <svg class="circuit" viewBox="0 0 420 356" role="img" aria-label={say('service.diagramLabel')}>
      <Wires />
      <Parts />
      <Words />
    </svg>
  );
}

function Wires() {
  return (
    <g class="wire">
      {/* Supply: battery, key, fuse, driver. */}
      <path d="M40 230 V76 H60 M90 76 H106 M142 76 H164" />
      {/* Feed to cavity 1 and the coil. */}
      <path d="M220 76 H320 V116 M320 164 V216" />
      {/* Sense from the pull-up to cavity 3 and the switch. */}
      <path d="M192 124 V134 H252 V108 H386 V138 M386 164 V216 H320" />
      {/* Ground from cavity 2 over the splice to the stud, and the battery's own. */}
      <path d="M320 216 V262 H236 V298 M40 252 V318 H236 V306" />
    </g>
  );
}

function Parts() {
  return (
    <g class="part">
      <rect x="164" y="40" width="56" height="112" class="box" />
      <rect x="290" y="92" width="118" height="136" class="box dashed" />
      <path d="M28 230 H52 M34 236 H46 M28 244 H52 M34 250 H46" />
      <path d="M60 76 L86 64" />
      <circle cx="60" cy="76" r="3" class="dot" />
      <circle cx="90" cy="76" r="3" class="dot" />
      <rect x="106" y="68" width="36" height="16" />
      <path d="M106 76 H142" />
      <path d="M178 70 L206 82 M178 82 L206 70" />
      <rect x="186" y="98" width="12" height="26" class="box" />
      <path d="M192 98 V90" />
      <rect x="310" y="116" width="20" height="48" class="box" />
      <path d="M310 156 L330 124" />
      <path d="M320 76 V116 M386 108 V138" class="wire" />
      <circle cx="386" cy="138" r="3" class="dot" />
      <circle cx="386" cy="164" r="3" class="dot" />
      <path d="M386 164 L400 143" />
      <path d="M320 164 V216 H386 V164" class="wire" />
      <circle cx="236" cy="262" r="4" class="dot" />
      <path d="M220 298 H252 M226 303 H246 M231 308 H241" />
    </g>
  );
}

function Words() {
  return (
    <g>
      <Word x={14} y={234} text="+" />
      <Word x={60} y={246} text={say('service.labels.battery')} />
      <Word x={64} y={100} text={say('service.labels.key')} />
      <Word x={104} y={58} text={say('service.labels.fuse')} />
      <Word x={164} y={32} text={say('service.labels.controller')} />
      <Word x={168} y={62} text={say('service.labels.driver')} />
      <Word x={226} y={100} text="2.2 kΩ" />
      <Word x={230} y={70} text="PK/BK" strong />
      <Word x={276} y={70} text={`1 · ${say('service.labels.feed')}`} />
      <Word x={228} y={150} text="GY/BU" strong />
      <Word x={228} y={167} text={`3 · ${say('service.labels.sense')}`} />
      <Word x={338} y={84} text={say('service.labels.unit')} />
      <Word x={336} y={136} text={say('service.labels.coil')} narrow />
      <Word x={336} y={150} text="32 Ω" />
      <Word x={336} y={186} text={say('service.labels.switch')} narrow />
      <Word x={330} y={250} text="BN" strong />
      <Word x={330} y={267} text={`2 · ${say('service.labels.ground')}`} />
      <Word x={186} y={266} text={say('service.labels.splice')} />
      <Word x={258} y={308} text={say('service.labels.stud')} />
    </g>
  );
}

interface WordProps {
  readonly x: number;
  readonly y: number;
  readonly text: ComponentChildren;
  readonly strong?: boolean;
  readonly narrow?: boolean;
}

function Word({ x, y, text, strong, narrow }: WordProps) {
  return (
    <text x={x} y={y} class={strong ? 'code' : narrow ? 'narrow' : ''}>
      {text}
    </text>
  );
}
