import type { ItemId } from '../devices/items.ts';
import type {
  AirSite,
  Cavity,
  ClampSetting,
  Fitting,
  KeyPosition,
  LeadEnd,
  LeadPoint,
  MeterFunction,
  SolenoidCommand,
  UnitPort,
} from '../devices/places.ts';

/** Everything that can be done to the world. Pointer, keys, scripts, replay and simulated learners emit only these. */
export type Action =
  | { readonly kind: 'set-key'; readonly position: KeyPosition }
  | { readonly kind: 'set-meter'; readonly function: MeterFunction }
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
] as const;
export type Refusal = (typeof REFUSALS)[number];
