import { Container, Graphics, type Renderer, Text } from 'pixi.js';

/**
 * Draws a dot and a letter that nobody sees, and lets the page live before and after. The first drawing of all has the graphics
 * card's programs made, which takes as long as the whole first frame of the bench.
 */
export async function warmUp(renderer: Renderer): Promise<void> {
  await breath();
  const stage = new Container();
  stage.addChild(new Graphics().circle(0, 0, 1).fill('#000000'));
  stage.addChild(new Text({ text: '0', style: { fontSize: 1 } }));
  stage.alpha = 0.01;
  renderer.render(stage);
  stage.destroy({ children: true });
  await breath();
}

function breath(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}
