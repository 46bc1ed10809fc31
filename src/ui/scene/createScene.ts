import { Container, type Renderer } from 'pixi.js';
import type { LeadEnd } from '../../sim/devices/places.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import { placeEnds, placeHotspots } from '../interaction/layout/hotspots.ts';
import type { PlacedEnd } from '../interaction/layout/leadEnds.ts';
import type { HotspotId, PlacedHotspot } from '../interaction/layout/PlacedHotspot.ts';
import type { ShelfTab } from '../interaction/layout/shelfPlan.ts';
import { type SheetFit, sameFit, windowOf } from '../interaction/viewFit.ts';
import { type ThemeName, tokensOf } from '../theme/tokens.ts';
import { Layers } from './Layers.ts';
import { loadFonts } from './loadFonts.ts';
import { chooseRenderer } from './renderer/chooseRenderer.ts';
import type { RendererKind } from './renderer/RendererKind.ts';
import { warmUp } from './renderer/warmUp.ts';
import type { Scene, SceneView } from './SceneView.ts';

/** A bench that is drawn gradually shows so many layers more at each frame: all at once would hold the page up. */
const LAYERS_A_FRAME = 2;

/** Largest device pixel ratio drawn at: above it nothing is seen and the fill cost doubles. */
const MOST_PIXELS = 2;

async function createRenderer(
  host: HTMLElement,
  asked: RendererKind | null,
  background: string,
): Promise<Renderer> {
  const renderer = await chooseRenderer(asked);
  await renderer.init({
    width: Math.max(1, host.clientWidth),
    height: Math.max(1, host.clientHeight),
    resolution: Math.min(MOST_PIXELS, globalThis.devicePixelRatio || 1),
    autoDensity: true,
    antialias: true,
    // Frames are drawn only when something changed, so the last one must stay.
    preserveDrawingBuffer: true,
    background,
    // Nothing beyond what the renderer's own file names: no events, no accessibility overlay, no filters.
    manageImports: false,
  });
  return renderer;
}

/** Where everything lies, worked out again only when something that places depend on is another. */
class Placing {
  private observation: Observation | null = null;
  private shelf: ShelfTab | null = null;
  private key = '';
  ends: ReadonlyMap<LeadEnd, PlacedEnd> = new Map();
  hotspots: ReadonlyMap<HotspotId, PlacedHotspot> = new Map();

  for(observation: Observation, shelf: ShelfTab): this {
    if (observation === this.observation && shelf === this.shelf) return this;
    this.observation = observation;
    this.shelf = shelf;
    const key = placingKey(observation, shelf);
    if (key === this.key) return this;
    this.key = key;
    this.ends = placeEnds(observation, shelf);
    this.hotspots = new Map(placeHotspots(observation, shelf).map((each) => [each.id, each]));
    return this;
  }
}

/** The parts of an observation that places depend on, and the open compartment. */
function placingKey({ leads, sites, plug, fuse, handPump, manometer }: Observation, shelf: ShelfTab): string {
  const waterLost = manometer.kPa === null;
  return JSON.stringify([leads, sites, plug.mated, fuse.fitted, handPump.handle, waterLost, shelf]);
}

/**
 * Makes the drawn bench inside `host` and fills it. By WebGL where a graphics card does it, else by the canvas renderer. The canvas
 * takes no pointer and no focus: controls are DOM elements laid over it.
 */
export async function createScene(
  host: HTMLElement,
  options: { renderer?: RendererKind | null; gradually?: boolean } = {},
): Promise<Scene> {
  let tokens = tokensOf('paper');
  await loadFonts();
  const renderer = await createRenderer(host, options.renderer ?? null, tokens.mat);
  const canvas = renderer.canvas as HTMLCanvasElement;
  canvas.style.cssText += 'display:block;pointer-events:none;touch-action:auto;';
  canvas.setAttribute('aria-hidden', 'true');
  if (options.gradually === true) await warmUp(renderer);
  host.appendChild(canvas);

  let fit: SheetFit = { scale: 1, offsetX: 0, offsetY: 0 };
  // Where the view is going: words are made as sharp as they will have to be there, once and not at every step of the way.
  let goal = fit;
  let [width, height] = [Math.max(1, host.clientWidth), Math.max(1, host.clientHeight)];
  const layers = new Layers(tokens, () => goal.scale * renderer.resolution);
  const stage = new Container();
  stage.addChild(layers.root);
  const placing = new Placing();
  const listeners: ((lost: boolean) => void)[] = [];
  let lost = false;
  let dirty = true;
  let shown = options.gradually === true ? 0 : layers.count;

  const place = (): void => {
    layers.root.scale.set(fit.scale);
    layers.root.position.set(fit.offsetX, fit.offsetY);
    dirty = true;
  };
  place();

  const onLost = (event: Event): void => {
    event.preventDefault();
    lost = true;
    for (const listener of listeners) listener(true);
  };
  const onRestored = (): void => {
    lost = false;
    layers.dress(tokens);
    dirty = true;
    for (const listener of listeners) listener(false);
  };
  canvas.addEventListener('webglcontextlost', onLost);
  canvas.addEventListener('webglcontextrestored', onRestored);

  return {
    canvas,
    draw(observation: Observation, view: SceneView, seconds: number) {
      const { ends, hotspots } = placing.for(observation, view.shelf);
      const hand = view.held === null ? null : view.pointer;
      shown = Math.min(layers.count, shown + LAYERS_A_FRAME);
      const window = windowOf(goal, width, height);
      const changed = layers.draw({ observation, view, seconds, ends, hotspots, hand, window }, shown);
      if (lost || !(changed || dirty)) return;
      dirty = false;
      renderer.render(stage);
    },
    resize() {
      [width, height] = [Math.max(1, host.clientWidth), Math.max(1, host.clientHeight)];
      renderer.resize(width, height, Math.min(MOST_PIXELS, globalThis.devicePixelRatio || 1));
      layers.stale();
      dirty = true;
    },
    look(now: SheetFit, going: SheetFit) {
      if (going.scale !== goal.scale) layers.sharpen();
      goal = going;
      if (sameFit(now, fit)) return;
      fit = now;
      place();
    },
    setTheme(name: ThemeName) {
      tokens = tokensOf(name);
      renderer.background.color = tokens.mat;
      layers.dress(tokens);
      dirty = true;
    },
    reword() {
      layers.stale();
      dirty = true;
    },
    onContextLost(callback) {
      listeners.push(callback);
    },
    destroy() {
      canvas.removeEventListener('webglcontextlost', onLost);
      canvas.removeEventListener('webglcontextrestored', onRestored);
      layers.destroy();
      stage.destroy();
      // What PixiJS keeps for the next drawing would grow with every job that is opened.
      renderer.destroy({ removeView: true, releaseGlobalResources: true });
    },
  };
}
