import type { ItemId } from '../devices/items.ts';
import type {
  AirSite,
  Cavity,
  ClampSetting,
  ExaminedPlace,
  ExtremesMode,
  Fitting,
  KeyPosition,
  LeadEnd,
  LeadPoint,
  MeterFunction,
  MeterJack,
  SmokeGas,
  SolenoidCommand,
  UnitPort,
  WhichUnit,
  WigglePlace,
} from '../devices/places.ts';

/** Everything that can be done to the world. Pointer, keys, scripts, replay and simulated learners emit only these. */
export type Action =
  | { readonly kind: 'set-key'; readonly position: KeyPosition }
  | { readonly kind: 'set-meter'; readonly function: MeterFunction }
  /** Puts the red lead's plug into a jack of the meter. */
  | { readonly kind: 'meter-jack'; readonly jack: MeterJack }
  /** Holds a range by its number (0 the smallest), or lets the meter choose again (null). */
  | { readonly kind: 'meter-range'; readonly range: number | null }
  | { readonly kind: 'meter-hold'; readonly on: boolean }
  /** Records the lowest and highest reading from now on, and says which of them is shown. */
  | { readonly kind: 'meter-extremes'; readonly show: ExtremesMode }
  /** Takes the present reading as zero. */
  | { readonly kind: 'meter-relative'; readonly on: boolean }
  | { readonly kind: 'place-lead'; readonly end: LeadEnd; readonly point: LeadPoint }
  | { readonly kind: 'lift-lead'; readonly end: LeadEnd }
  | { readonly kind: 'insert-pin'; readonly cavity: Cavity }
  | { readonly kind: 'remove-pin'; readonly cavity: Cavity }
  | { readonly kind: 'part-plug' }
  | { readonly kind: 'mate-plug' }
  | { readonly kind: 'switch-jumper'; readonly on: boolean }
  | { readonly kind: 'renew-jumper-fuse' }
  | { readonly kind: 'pull-fuse' }
  | { readonly kind: 'fit-fuse' }
  /** Puts a hose, cap or plug on a site; taking it from wherever it was. */
  | { readonly kind: 'fit'; readonly item: Fitting; readonly site: AirSite }
  /** Takes a hose, cap or plug off; it lies open on the mat. */
  | { readonly kind: 'take-off'; readonly item: Fitting }
  | { readonly kind: 'clamp'; readonly port: UnitPort; readonly setting: ClampSetting }
  /** Moves the hand pump's handle towards a travel between 0 (in) and 1 (fully drawn). */
  | { readonly kind: 'pump-handle'; readonly position: number }
  /** One whole stroke: out to `depth` (0 to 1) and back. */
  | { readonly kind: 'stroke'; readonly depth: number }
  | { readonly kind: 'release'; readonly open: boolean }
  /** The bench's 12 V supply. */
  | { readonly kind: 'switch-supply'; readonly on: boolean }
  /** Needle bleed of the 1 L jar, 0 shut to 1 open. */
  | { readonly kind: 'set-bleed'; readonly openness: number }
  | { readonly kind: 'refill-manometer' }
  /** Smoke machine: its gas and its regulator's setting, pascal above the room (0 to 14 000). */
  | { readonly kind: 'set-smoke'; readonly gas: SmokeGas; readonly pa: number }
  /** Puts the other unit in the unit's place; plug parted and barbs bare first. */
  | { readonly kind: 'swap-unit'; readonly to: WhichUnit }
  /** Feels a terminal of the parted harness half with the pin-drag gauge. */
  | { readonly kind: 'drag-test'; readonly cavity: Cavity }
  | { readonly kind: 'look'; readonly at: ExaminedPlace }
  | { readonly kind: 'listen'; readonly at: ExaminedPlace }
  /** Moves the harness for a second. */
  | { readonly kind: 'wiggle'; readonly at: WigglePlace }
  | { readonly kind: 'clear-codes' }
  /** Takes the truck out for drive cycles; the bench's clock stands still meanwhile. */
  | { readonly kind: 'road-test'; readonly cycles: number }
  /** Reader tool: asks the controller to drive the solenoid (key on needed). */
  | { readonly kind: 'command-solenoid'; readonly command: SolenoidCommand }
  /** Fits a new item from the parts cupboard in place of the old. */
  | { readonly kind: 'renew'; readonly item: ItemId };

export type ActionKind = Action['kind'];

/** Why the bench would not let a hand do something. Each has a sentence in `text`. */
export const REFUSALS = [
  'lead-already-there',
  'lead-is-loose',
  'point-needs-pin',
  'point-needs-parted-plug',
  'point-taken-by-own-tip',
  'pin-already-in',
  'pin-not-in',
  'pin-has-lead',
  'plug-already-parted',
  'plug-already-mated',
  'plug-has-leads',
  'fuse-already-out',
  'fuse-already-in',
  'site-taken',
  'does-not-fit',
  'not-fitted',
  'nothing-to-clamp',
  'clamp-already-so',
  'pump-still-moving',
  'reader-needs-key-on',
  'already-so',
  'range-not-there',
  'meter-is-off',
  'no-number-to-zero',
  'water-is-there',
  'plug-must-be-parted',
  'barbs-must-be-bare',
  'unit-is-not-the-trucks',
  'tools-on-the-truck',
  'plug-must-be-mated',
  'key-must-be-off',
  'fuse-must-be-in',
  'cannot-be-reached',
] as const;
export type Refusal = (typeof REFUSALS)[number];
