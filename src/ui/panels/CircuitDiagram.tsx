import { say } from '../../text/translate.ts';

/**
 * The rig's circuit in the style of IEC 60617: supply at the left, controller in the middle, unit at the right, ground below.
 * Wires are named by their IEC 60757 letters.
 */
export function CircuitDiagram() {
  return (
    <svg class="circuit" viewBox="0 0 360 300" role="img" aria-label={say('service.diagramLabel')}>
      <g class="wire">
        <path d="M40 210 V60 H62 M92 60 H112 M144 60 H166 M40 230 V262 M40 262 H330 M214 262 V252" />
        <path d="M40 262 H40" />
        <path d="M196 60 H290 V92" />
        <path d="M290 140 V176 H222 V210 M222 236 V262" />
        <path d="M196 110 H236 V128 H330 V150 M330 172 V176 H290" />
      </g>
      <Battery />
      <g class="part">
        <path d="M62 60 L88 48" />
        <circle cx="62" cy="60" r="3" />
        <circle cx="92" cy="60" r="3" />
        <rect x="112" y="52" width="32" height="16" />
        <path d="M112 60 H144" class="wire" />
        <rect x="160" y="26" width="40" height="112" class="box" />
        <path d="M170 54 L186 66 M170 66 L186 54" />
        <rect x="174" y="96" width="10" height="24" />
        <path d="M179 120 V126 M179 96 V88 M179 110 H196" class="wire" />
        <rect x="262" y="82" width="92" height="106" class="box" stroke-dasharray="6 4" />
        <rect x="280" y="92" width="20" height="48" />
        <path d="M280 132 L300 100" />
        <circle cx="330" cy="150" r="3" />
        <circle cx="330" cy="172" r="3" />
        <path d="M330 172 L343 153" />
        <circle cx="222" cy="210" r="4" class="dot" />
        <path d="M206 236 H238 M212 242 H232 M217 248 H227" />
      </g>
      <g class="words">
        <text x="24" y="204" text-anchor="end" transform="rotate(-90 24 204)" />
        <text x="52" y="226">
          {say('service.labels.battery')}
        </text>
        <text x="66" y="84">
          {say('service.labels.key')}
        </text>
        <text x="112" y="44">
          {say('service.labels.fuse')}
        </text>
        <text x="152" y="20">
          {say('service.labels.controller')}
        </text>
        <text x="262" y="204">
          {say('service.labels.unit')}
        </text>
        <text x="206" y="52" class="code">
          PK/BK
        </text>
        <text x="250" y="52">
          1 · {say('service.labels.feed')}
        </text>
        <text x="206" y="102" class="code">
          GY/BU
        </text>
        <text x="244" y="122" class="code" />
        <text x="206" y="150">
          3 · {say('service.labels.sense')}
        </text>
        <text x="230" y="192" class="code">
          BN
        </text>
        <text x="190" y="172">
          2 · {say('service.labels.ground')}
        </text>
        <text x="232" y="214">
          {say('service.labels.splice')}
        </text>
        <text x="244" y="246">
          {say('service.labels.stud')}
        </text>
        <text x="305" y="112" class="small">
          32 Ω
        </text>
        <text x="166" y="150" class="small">
          2.2 kΩ
        </text>
        <text x="262" y="220" class="small">
          {say('service.labels.coil')}
        </text>
        <text x="262" y="236" class="small">
          {say('service.labels.switch')}
        </text>
      </g>
    </svg>
  );
}

function Battery() {
  return (
    <g class="part">
      <path d="M26 210 H54 M33 218 H47 M26 224 H54 M33 230 H47" />
      <text x="14" y="212">
        +
      </text>
    </g>
  );
}
