import type { Renderer } from 'pixi.js';
import { hasWebGL } from './graphicsCard.ts';
import type { RendererKind } from './RendererKind.ts';

/**
 * WebGL where a graphics card does it, else a plain canvas; only the code of the one that is used is fetched. A browser that does
 * WebGL in software takes many times longer for a picture by it than by a plain canvas, and both look the same.
 */
export async function chooseRenderer(asked: RendererKind | null): Promise<Renderer> {
  if (asked !== 'canvas' && hasWebGL(asked === null)) return (await import('./webgl.ts')).webglRenderer();
  return (await import('./canvas.ts')).canvasRenderer();
}
