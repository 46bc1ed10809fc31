import type { Plugin } from 'vite';

/**
 * PixiJS names everything it has in one file that also sets all of it up. Here only what is named where it is used counts
 * (src/ui/scene/renderer); without this the bench would fetch twice as much of it.
 */
export function leanPixi(): Plugin {
  return {
    name: 'lean-pixi',
    apply: 'build',
    transform: {
      filter: { id: /pixi\.js\/lib\/index\.mjs$/ },
      handler: (code) => ({ code, map: null, moduleSideEffects: false }),
    },
  };
}
