import { unreachable } from '../../base/assert.ts';
import { LEAD_ENDS, type LeadPoint } from '../../sim/devices/places.ts';
import type { MeterDisplay, Observation } from '../../sim/world/Observation.ts';
import { describeEnd, describeSide } from '../../text/describePoint.ts';
import { capital, needleByEye } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { siteOf } from '../interaction/Grip.ts';
import { nameOf } from '../interaction/HotspotMeaning.ts';
import type { HotspotId } from '../interaction/layout/hotspots.ts';

/** The accessible name of a control: what it is and how it stands now. */
export function controlName(id: HotspotId, seen: Observation): string {
  const name = nameOf(id);
  switch (name.kind) {
    case 'end':
      return describeEnd(name.of, seen.leads[name.of]);
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
      return say('hand.gauge', { inHg: needleByEye(seen.gauge.needleKPa) });
    case 'lcd':
      return seen.meter.display.digits === ''
        ? say('hand.displayOff')
        : say('hand.display', { reading: spokenReading(seen.meter.display) });
    default:
      return unreachable(name);
  }
}

/** A reading in words a speech engine says well. */
export function spokenReading({ digits, unit }: MeterDisplay): string {
  if (digits.includes('OL')) return say('hand.overRange');
  return say('hand.reading', { digits, unit: unit === '' ? '' : say(`hand.unitSpoken.${unit}`) });
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
