import type { Plugin } from 'vite';

/** Parts of PixiJS that its other parts name and the bench never comes to: pictures in SVG, words with tags in them. */
const NEVER_USED: Readonly<Record<string, string>> = {
  'scene/graphics/shared/svg/SVGParser.mjs': 'SVGParser',
  'scene/graphics/shared/svg/parseSVGPath.mjs': 'parseSVGPath',
  'scene/text/canvas/utils/measureTaggedText.mjs':
    'measureTaggedText, tokenizeTaggedRuns, wordWrapTaggedLines',
};

/**
 * PixiJS names everything it has in one file that also sets all of it up. Here only what is named where it is used counts
 * (src/ui/scene/renderer); without this the bench would fetch twice as much of it.
 */
export function leanPixi(): Plugin {
  return {
    name: 'lean-pixi',
    apply: 'build',
    transform: {
      filter: { id: /pixi\.js\/lib\/.*\.mjs$/ },
      handler(code, id) {
        if (id.endsWith('pixi.js/lib/index.mjs')) return { code, map: null, moduleSideEffects: false };
        const unused = Object.entries(NEVER_USED).find(([path]) => id.endsWith(`pixi.js/lib/${path}`));
        if (unused === undefined) return;
        const [path, names] = unused;
        if (!code.includes(`export { ${names} }`)) this.error(`${path} gives more than ${names} now`);
        const stubs = names
          .split(', ')
          .map(
            (name) => `export function ${name}() { throw new Error('${name} is no part of this build'); }`,
          );
        return { code: stubs.join('\n'), map: null };
      },
    },
  };
}
