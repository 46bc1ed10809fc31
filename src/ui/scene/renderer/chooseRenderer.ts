import { isWebGLSupported, type Renderer } from 'pixi.js';

/** WebGL where there is any, else a plain canvas; only the code of the one that is used is fetched. */
export async function chooseRenderer(forceCanvas: boolean): Promise<Renderer> {
  if (!forceCanvas && isWebGLSupported()) return (await import('./webgl.ts')).webglRenderer();
  return (await import('./canvas.ts')).canvasRenderer();
}
