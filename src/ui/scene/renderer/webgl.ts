import {
  CanvasTextPipe,
  CanvasTextSystem,
  extensions,
  GraphicsContextSystem,
  GraphicsPipe,
  type Renderer,
  WebGLRenderer,
} from 'pixi.js';

/** The renderer for WebGL, with shapes and words and nothing else: the bench is made of no other thing. */
export function webglRenderer(): Renderer {
  extensions.add(GraphicsPipe, GraphicsContextSystem, CanvasTextPipe, CanvasTextSystem);
  return new WebGLRenderer() as Renderer;
}
