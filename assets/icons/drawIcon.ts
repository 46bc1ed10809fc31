import { tokensOf } from '../../src/ui/theme/tokens.ts';

/** `any` fills its square to the rounded corners; `maskable` keeps to the middle, because a device may cut it to any shape. */
export type IconPurpose = 'any' | 'maskable';

/** Of a maskable icon only a circle of 80 % of its width is sure to be seen (W3C, Web Application Manifest, "icon masks"). */
const SAFE_SCALE = 0.9;
const SIZE = 512;

/** The icon: a gauge on its barb, drawn in ink as on the bench, with a tick on its face for a tool that was proven. */
export function drawIcon(purpose: IconPurpose): string {
  const { paper, ink } = tokensOf('paper');
  const ground =
    purpose === 'any'
      ? `<rect x="8" y="8" width="496" height="496" rx="96" fill="${paper}" stroke="${ink}" stroke-width="16"/>`
      : `<rect width="${SIZE}" height="${SIZE}" fill="${paper}"/>`;
  const scale = purpose === 'any' ? 1 : SAFE_SCALE;
  const shift = (SIZE * (1 - scale)) / 2;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${SIZE} ${SIZE}" width="${SIZE}" height="${SIZE}">`,
    ground,
    `<g transform="translate(${shift} ${shift}) scale(${scale})" stroke="${ink}" stroke-linejoin="round" stroke-linecap="round">`,
    ...barb(),
    ...face(),
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

/** The neck and the hose below the dial. */
function barb(): readonly string[] {
  const { steel, hose } = tokensOf('paper');
  return [
    `<path d="M222 368 V412 H290 V368 Z" fill="${steel}" stroke-width="14"/>`,
    `<path d="M206 412 H306 V456 H206 Z" fill="${hose}" stroke-width="14"/>`,
    '<path d="M206 434 H306" fill="none" stroke-width="10"/>',
  ];
}

const CENTRE = { x: 256, y: 222 };
const RADIUS = 160;

/** The dial with its scale, its needle and the tick. */
function face(): readonly string[] {
  const { cream, live, act, ink } = tokensOf('paper');
  const marks = [-120, -80, -40, 0, 40, 80, 120].map((degrees) => {
    const from = onDial(degrees, RADIUS - 20);
    const to = onDial(degrees, RADIUS - 48);
    return `<path d="M${from} L${to}" fill="none" stroke-width="12"/>`;
  });
  return [
    `<circle cx="${CENTRE.x}" cy="${CENTRE.y}" r="${RADIUS}" fill="${cream}" stroke-width="20"/>`,
    ...marks,
    `<path d="M${onDial(230, 36)} L${onDial(50, 116)}" fill="none" stroke="${live}" stroke-width="16"/>`,
    `<circle cx="${CENTRE.x}" cy="${CENTRE.y}" r="20" fill="${ink}" stroke="none"/>`,
    `<path d="M196 296 L238 334 L318 268" fill="none" stroke="${act}" stroke-width="26"/>`,
  ];
}

/** A point on the dial, degrees from the top with the clock. */
function onDial(degrees: number, radius: number): string {
  const angle = (degrees * Math.PI) / 180;
  const x = CENTRE.x + radius * Math.sin(angle);
  const y = CENTRE.y - radius * Math.cos(angle);
  return `${x.toFixed(1)} ${y.toFixed(1)}`;
}
