import {
  CanvasGraphicsContextSystem,
  CanvasGraphicsPipe,
  CanvasRenderer,
  CanvasRendererTextSystem,
  CanvasTextPipe,
  extensions,
  type Renderer,
} from 'pixi.js';

/** The renderer for a plain canvas, with shapes and words and nothing else. */
export function canvasRenderer(): Renderer {
  extensions.add(CanvasGraphicsPipe, CanvasGraphicsContextSystem, CanvasTextPipe, CanvasRendererTextSystem);
  return new CanvasRenderer() as unknown as Renderer;
}
