import '../../../src/text/wholeEnglish.ts';
import { fitView, type ViewName } from '../../../src/ui/interaction/views.ts';
import { createScene } from '../../../src/ui/scene/createScene.ts';
import { startObservation } from '../layout/benchObservations.ts';
import { PICTURES } from './pictures.ts';

/** Draws the picture named in the address: `?picture=start&w=850&h=610&canvas=1&time=1` (`time`: mean of 60 frames). */
const query = new URLSearchParams(location.search);
const picture = PICTURES[query.get('picture') ?? 'start'];
const host = document.getElementById('host');
if (host === null || picture === undefined) throw new Error('no host, or no such picture');
host.style.width = `${query.get('w') ?? 850}px`;
host.style.height = `${query.get('h') ?? 610}px`;

const scene = await createScene(host, { renderer: query.get('canvas') === '1' ? 'canvas' : 'webgl' });
const fit = fitView((query.get('view') ?? 'whole') as ViewName, host.clientWidth, host.clientHeight);
scene.look(fit, fit);
scene.setTheme(picture.theme);
scene.draw(startObservation(), picture.view, 0);
const before = performance.now();
scene.draw(picture.observation, picture.view, 0.1);
const firstMs = performance.now() - before;

// A needle and digits that move every frame: what a frame costs in script while one pumps.
const frames = query.get('time') === '1' ? 60 : 1;
const from = performance.now();
for (let i = 0; i < frames; i++) {
  const moving = {
    ...picture.observation,
    gauge: { needleKPa: picture.observation.gauge.needleKPa + (i % 2) * 0.3, steady: false },
    handPump: {
      ...picture.observation.handPump,
      handle: (i % 2) * 0.02 + picture.observation.handPump.handle,
    },
  };
  scene.draw(moving, picture.view, 0.1);
}
scene.draw(picture.observation, picture.view, 0.1);
const frameMs = (performance.now() - from) / frames;
document.title = `ready: change ${firstMs.toFixed(1)} ms, moving frame ${frameMs.toFixed(2)} ms`;

// For trying the loss of the drawing surface by hand or from a script.
Object.assign(globalThis, { scene, redraw: () => scene.draw(picture.observation, picture.view, 0.2) });
