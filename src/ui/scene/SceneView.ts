import type { Fitting, LeadEnd, UnitPort } from '../../sim/devices/places.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { Vec } from '../interaction/layout/geometry.ts';
import type { HotspotId } from '../interaction/layout/PlacedHotspot.ts';
import type { ShelfTab } from '../interaction/layout/shelfPlan.ts';
import type { SheetFit } from '../interaction/viewFit.ts';
import type { ThemeName } from '../theme/tokens.ts';

/** What the hand holds, as far as the drawing needs it. */
export type HeldThing =
  | { readonly kind: 'end'; readonly end: LeadEnd }
  | { readonly kind: 'fitting'; readonly item: Fitting }
  | { readonly kind: 'pin' }
  | { readonly kind: 'drag-gauge' }
  | { readonly kind: 'sense'; readonly how: 'look' | 'listen' };

/** What the drawing needs beside the observation. Positions in bench units. */
export interface SceneView {
  readonly held: HeldThing | null;
  readonly pointer: Vec | null;
  /** The compartment of the tool shelf that stands open. */
  readonly shelf: ShelfTab;
  /** Teal ring: hover or focus. */
  readonly ring: HotspotId | null;
  /** Teal double ring: what the present step asks to be touched. Left out where nothing is asked. */
  readonly asked?: HotspotId | null;
  /** The clamp that is held, and how far it is on its way to over-tight, 0 to 1. */
  readonly tightening: { readonly port: UnitPort; readonly share: number } | null;
  /** Faint marks on the places the held thing may go. */
  readonly targets: readonly HotspotId[];
  /** Digits beside the needle (walkthroughs). */
  readonly showDigits: boolean;
  /** Functions under the cavities (once the service data has been opened). */
  readonly showFunctions: boolean;
  readonly reducedMotion: boolean;
  readonly captions: boolean;
}

/** The drawn bench. Nothing moves unless `draw` is called. */
export interface Scene {
  /** Draws one frame; `seconds` is a running time for movement and captions, never less than at the last call. */
  draw(observation: Observation, view: SceneView, seconds: number): void;
  /** Takes the host's present size. */
  resize(): void;
  setTheme(name: ThemeName): void;
  /** Draws every word again at the next frame: the language is another. */
  reword(): void;
  /**
   * How the sheet lies in the host now, and how it will lie when the move under way is over: the same while nothing moves. The drawing
   * has no view of its own.
   */
  look(now: SheetFit, going: SheetFit): void;
  /** Calls back when the drawing surface is lost (true) and restored (false). */
  onContextLost(callback: (lost: boolean) => void): void;
  destroy(): void;
  readonly canvas: HTMLCanvasElement;
}
