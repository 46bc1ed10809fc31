import type { SceneView } from '../../../src/ui/scene/SceneView.ts';

/** A bench nobody touches: nothing held, nothing ringed. */
export const QUIET: SceneView = {
  held: null,
  pointer: null,
  shelf: 'leads',
  ring: null,
  tightening: null,
  targets: [],
  showDigits: false,
  showFunctions: false,
  reducedMotion: false,
  captions: true,
};
