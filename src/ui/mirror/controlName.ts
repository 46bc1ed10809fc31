import { unreachable } from '../../base/assert.ts';
import { LEAD_ENDS, type LeadPoint } from '../../sim/devices/places.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import { describeSide } from '../../text/describePoint.ts';
import { capital, gaugeByEye } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { siteOf } from '../interaction/Grip.ts';
import { nameOf } from '../interaction/HotspotMeaning.ts';
import type { HotspotId } from '../interaction/layout/PlacedHotspot.ts';
import { tabInUse } from '../interaction/layout/shelf.ts';
import { displayName, meterKeyName } from './meterNames.ts';
import { endName, type ShelfThing, shelfName } from './toolNames.ts';

/** The accessible name of a control: what it is and how it stands now. */
export function controlName(id: HotspotId, seen: Observation): string {
  const name = nameOf(id);
  switch (name.kind) {
    case 'end':
      return endName(name.of, seen);
    case 'point':
      return pointName(name.of, seen);
    case 'site': {
      const fitting = seen.sites[name.of];
      const site = capital(say(`sites.${name.of}`));
      if (fitting === null) return say('hand.site', { site });
      return say('hand.siteWith', { site, fitting: say(`fittings.${fitting}`) });
    }
    case 'fitting': {
      const site = siteOf(name.of, seen);
      const fitting = capital(say(`fittings.${name.of}`));
      if (site === null) return say('hand.fitting', { fitting });
      return say('hand.fittingOn', { fitting, site: say(`sites.${site}`) });
    }
    case 'clamp':
      return say(seen.sites[name.of] === null ? 'hand.clampNone' : 'hand.clamp', {
        port: say(`sites.${name.of}`),
        setting: say(`clamps.${seen.clamps[name.of]}`),
      });
    case 'cavity-pin':
      return say(seen.plug.pins[name.of - 1] ? 'hand.pinIn' : 'hand.pinOut', { cavity: name.of });
    case 'key-position':
      return capital(say(`key.${name.of}`));
    case 'meter-selector':
      return capital(say(`meterFunctions.${name.of}`));
    case 'key':
      return say('hand.keyGroup', { position: say(`key.${seen.key}`) });
    case 'pin-tray':
      return say('hand.pinTray');
    case 'fuse':
      return fuseName(seen);
    case 'plug':
      return say(seen.plug.mated ? 'hand.plugMated' : 'hand.plugParted');
    case 'jumper-switch':
      return say(seen.jumper.switchedOn ? 'hand.jumperOn' : 'hand.jumperOff');
    case 'jumper-fuse':
      return say(seen.jumper.fuse === 'whole' ? 'hand.jumperFuseWhole' : 'hand.jumperFuseMelted');
    case 'pump-handle':
      return say('hand.pumpHandle');
    case 'pump-release':
      return say(seen.handPump.releaseOpen ? 'hand.releaseOpen' : 'hand.releaseShut');
    case 'reader':
      return say('hand.reader');
    case 'gauge':
      return say('hand.gauge', { vacuum: gaugeByEye(seen.gauge.needleKPa) });
    case 'lcd':
      return displayName(seen.meter);
    case 'meter-jack':
      return say(seen.meter.jack === name.of ? 'controls.jackHere' : 'controls.jackFree', {
        jack: capital(say(`meterJacks.${name.of}`)),
      });
    case 'meter-key':
      return meterKeyName(name.of, seen.meter);
    case 'place':
      return say('controls.look', { place: say(`examined.${name.of}`) });
    case 'wiggle':
      return say(seen.wiggling === name.of ? 'controls.wiggling' : 'controls.wiggle', {
        place: say(`wigglePlaces.${name.of}`),
      });
    case 'shelf': {
      const tab = say(`drawing.shelf.${name.of}`);
      return tabInUse(name.of, seen) ? say('controls.shelfInUse', { tab }) : tab;
    }
    case 'supply-switch':
    case 'bleed-less':
    case 'bleed-more':
    case 'manometer':
    case 'refill':
    case 'smoke-gas':
    case 'smoke-less':
    case 'smoke-more':
    case 'smoke-gauge':
    case 'eye':
    case 'ear':
    case 'drag-gauge':
      return shelfName(name as ShelfThing, seen);
    default:
      return unreachable(name);
  }
}

function pointName(point: LeadPoint, seen: Observation): string {
  const here = LEAD_ENDS.filter((end) => seen.leads[end] === point).map((end) => say(`ends.${end}`));
  const name = capital(describeSide(point));
  return here.length === 0 ? name : say('hand.pointWith', { point: name, ends: here.join(', ') });
}

function fuseName({ fuse }: Observation): string {
  if (fuse.fitted) return say('hand.fuseIn');
  return say(fuse.element === 'melted' ? 'hand.fuseOutMelted' : 'hand.fuseOutWhole');
}
