import type { BenchSurface } from '../../sim/devices/BenchSurface.ts';
import {
  type AirSite,
  type ExtremesMode,
  type Fitting,
  type KeyPosition,
  type LeadEnd,
  type LeadPoint,
  type MeterFunction,
  type MeterJack,
  type SmokeGas,
  type SolenoidCommand,
  UNIT_PORTS,
  type UnitPort,
  type WhichUnit,
} from '../../sim/devices/places.ts';
import type { SittingAction } from '../sitting/SittingAction.ts';

/**
 * How the bench stands by what hands have done to it, and by nothing else: it is the same in all worlds that have had the
 * same actions. Holds nothing that was read, heard or found.
 */
export interface Hands {
  readonly key: KeyPosition;
  readonly mated: boolean;
  readonly command: SolenoidCommand;
  readonly fuseIn: boolean;
  readonly supplyOn: boolean;
  readonly jumperOn: boolean;
  readonly leads: Readonly<Partial<Record<LeadEnd, LeadPoint>>>;
  readonly meter: {
    readonly function: MeterFunction;
    readonly jack: MeterJack;
    readonly extremes: ExtremesMode;
  };
  readonly sites: Readonly<Partial<Record<AirSite, Fitting>>>;
  /** Ports whose clamp is not tight. */
  readonly loose: readonly UnitPort[];
  readonly releaseOpen: boolean;
  readonly bleedOpen: boolean;
  /** Strokes of the hand pump since air was last let in. */
  readonly strokes: number;
  readonly smoke: SmokeGas;
  readonly unit: WhichUnit;
}

/** The bench as a job begins: the rig's hoses and the plug on, key off, meter off, tools in the tray. */
export const handsOff = (hoses: BenchSurface['hoses']): Hands => ({
  key: 'off',
  mated: true,
  command: 'off',
  fuseIn: true,
  supplyOn: false,
  jumperOn: false,
  leads: {},
  meter: { function: 'off', jack: 'volts', extremes: 'off' },
  sites: hoses,
  loose: [],
  releaseOpen: false,
  bleedOpen: false,
  strokes: 0,
  smoke: 'off',
  unit: 'truck',
});

/** The bench after one more action. What the paperwork does changes nothing. */
export function handsAfter(hands: Hands, action: SittingAction): Hands {
  switch (action.kind) {
    case 'set-key': {
      const command = action.position === 'off' ? 'off' : hands.command;
      return { ...hands, key: action.position, command };
    }
    case 'command-solenoid':
      return { ...hands, command: action.command };
    case 'part-plug':
    case 'mate-plug':
      return { ...hands, mated: action.kind === 'mate-plug' };
    case 'pull-fuse':
    case 'fit-fuse':
      return { ...hands, fuseIn: action.kind === 'fit-fuse' };
    case 'switch-supply':
      return { ...hands, supplyOn: action.on };
    case 'switch-jumper':
      return { ...hands, jumperOn: action.on };
    case 'place-lead':
      return { ...hands, leads: { ...hands.leads, [action.end]: action.point } };
    case 'lift-lead': {
      const { [action.end]: _, ...leads } = hands.leads;
      return { ...hands, leads };
    }
    case 'set-meter':
      return { ...hands, meter: { ...hands.meter, function: action.function, extremes: 'off' } };
    case 'meter-jack':
      return { ...hands, meter: { ...hands.meter, jack: action.jack } };
    case 'meter-extremes':
      return { ...hands, meter: { ...hands.meter, extremes: action.show } };
    case 'swap-unit':
      return { ...hands, unit: action.to, strokes: 0 };
    default:
      return airAfter(hands, action);
  }
}

function airAfter(hands: Hands, action: SittingAction): Hands {
  switch (action.kind) {
    case 'fit':
    case 'take-off': {
      const off = Object.entries(hands.sites).filter(([, item]) => item !== action.item);
      const sites: Hands['sites'] = Object.fromEntries(off);
      const loose = hands.loose.filter((port) => sites[port] !== undefined);
      if (action.kind === 'take-off') return { ...hands, sites, loose, strokes: 0 };
      const port = UNIT_PORTS.filter((name) => name === action.site);
      return {
        ...hands,
        sites: { ...sites, [action.site]: action.item },
        loose: [...loose, ...port],
        strokes: 0,
      };
    }
    case 'clamp': {
      const loose = hands.loose.filter((port) => port !== action.port);
      return { ...hands, loose: action.setting === 'loose' ? [...loose, action.port] : loose };
    }
    case 'stroke':
      return { ...hands, strokes: hands.strokes + action.depth };
    case 'release':
      return { ...hands, releaseOpen: action.open, strokes: action.open ? 0 : hands.strokes };
    case 'set-bleed':
      return { ...hands, bleedOpen: action.openness > 0 };
    case 'set-smoke':
      return { ...hands, smoke: action.gas };
    case 'road-test':
      return { ...hands, key: 'off', command: 'off', strokes: 0 };
    default:
      return hands;
  }
}
