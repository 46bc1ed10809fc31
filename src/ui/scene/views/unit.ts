import type { RigId } from '../../../sim/devices/BenchSurface.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import { UNIT_CONNECTOR } from '../../interaction/layout/benchPlan.ts';
import type { Vec } from '../../interaction/layout/geometry.ts';
import { PLUG_INSET } from '../../interaction/layout/plugPlan.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';
import { FLAP_TAG, paintFlap } from './units/paintFlap.ts';
import { PUMP_TAG, paintPump } from './units/paintPump.ts';
import { paintBarb, paintConnector, paintPortWord, paintTag, tagOf } from './units/unitParts.ts';

/** What stands between the barbs, and where the string of its tag is tied, for each rig. */
const BODIES: Readonly<Record<RigId, { readonly paint: (art: Art) => void; readonly tag: Vec }>> = {
  'leak-detection-pump': { paint: paintPump, tag: PUMP_TAG },
  'flap-actuator': { paint: paintFlap, tag: FLAP_TAG },
};

/** Lines from the connector to the plug drawn large. */
function paintLens(art: Art): void {
  const hint = { line: 1.6, colour: art.tokens.inkSoft };
  const corner = { x: UNIT_CONNECTOR.x + 54, y: UNIT_CONNECTOR.y };
  art.dashes(corner, { x: PLUG_INSET.x, y: PLUG_INSET.y + 10 }, 8, hint);
  art.dashes(
    { x: corner.x, y: corner.y + 58 },
    { x: PLUG_INSET.x, y: PLUG_INSET.y + PLUG_INSET.h - 8 },
    8,
    hint,
  );
}

/** The unit of the rig: its barbs, its body, its connector, the tag that says whose it is. */
export const unit: Layer = {
  name: 'unit',
  key: ({ observation }) =>
    `${observation.surface.rig} ${observation.plug.mated} ${tagOf(observation)} ${cracks(observation)}`,
  paint(art, { observation }) {
    const { surface, cracked, plug } = observation;
    const { paint, tag } = BODIES[surface.rig];
    paintLens(art);
    for (const port of surface.ports) paintBarb(art, port, cracked[port]);
    paint(art);
    for (const port of surface.ports) paintPortWord(art, port);
    paintConnector(art, plug.mated);
    paintTag(art, tagOf(observation), tag);
  },
};

const cracks = ({ cracked }: Observation): string => Object.values(cracked).join();
