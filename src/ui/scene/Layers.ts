import { Container } from 'pixi.js';
import type { BenchTool } from '../../sim/devices/items.ts';
import { isThere } from '../interaction/toolOfSpot.ts';
import type { Tokens } from '../theme/tokens.ts';
import { Art } from './Art.ts';
import type { Frame, Layer } from './Frame.ts';
import { createCaptions } from './views/captions.ts';
import { clamps, tightening } from './views/clamps.ts';
import { createFindingCaptions } from './views/findingCaptions.ts';
import { gaugeDial, gaugeNeedle } from './views/gauge.ts';
import { createHoses, stubWords } from './views/hoses.ts';
import { hoverName } from './views/hoverName.ts';
import { jar } from './views/jar.ts';
import { keySwitch } from './views/keySwitch.ts';
import { createLeads } from './views/leads.ts';
import { marks } from './views/marks.ts';
import { mat } from './views/mat.ts';
import { meterBody, meterKeys, meterSelector } from './views/meter.ts';
import { meterDisplay } from './views/meterDisplay.ts';
import { plugInset } from './views/plugInset.ts';
import { power } from './views/power.ts';
import { pump } from './views/pump.ts';
import { senseInHand, senses } from './views/senses.ts';
import { shelf } from './views/shelf.ts';
import { smokeMachine } from './views/smokeMachine.ts';
import { smokePuffs } from './views/smokePuffs.ts';
import { stoppers } from './views/stoppers.ts';
import { createStrokeCaption } from './views/strokeCaption.ts';
import { supply } from './views/supply.ts';
import { jumperBody, pins, reader } from './views/tools.ts';
import { truckFuse } from './views/truckFuse.ts';
import { truckSide } from './views/truckSide.ts';
import { unit } from './views/unit.ts';
import { waterManometer } from './views/waterManometer.ts';
import { wiggleMarks } from './views/wiggleMarks.ts';

/** From the mat up. */
function allLayers(): readonly Layer[] {
  return [
    mat,
    shelf,
    power,
    supply,
    truckFuse,
    keySwitch,
    unit,
    plugInset,
    meterBody,
    meterKeys,
    meterSelector,
    meterDisplay,
    truckSide,
    waterManometer,
    smokeMachine,
    jar,
    senses,
    pump,
    createHoses(),
    stoppers,
    clamps,
    stubWords,
    gaugeDial,
    gaugeNeedle,
    reader,
    pins,
    jumperBody,
    createLeads(),
    smokePuffs,
    wiggleMarks,
    marks,
    tightening,
    hoverName,
    senseInHand,
    createFindingCaptions(),
    createStrokeCaption(),
    createCaptions(),
  ];
}

/** Layers that are one tool's: not drawn where the bench does not have it. */
const TOOL_OF_LAYER: Readonly<Record<string, BenchTool>> = {
  supply: 'bench-supply',
  'meter body': 'meter',
  'meter keys': 'meter',
  'meter selector': 'meter',
  'meter display': 'meter',
  'water manometer': 'manometer',
  'smoke machine': 'smoke-machine',
  jar: 'jar',
  pump: 'hand-pump',
  'gauge dial': 'hand-pump',
  'gauge needle': 'hand-pump',
  stoppers: 'caps-and-plugs',
  reader: 'reader',
  pins: 'back-probe-pins',
  jumper: 'jumper',
};

interface Painted {
  readonly layer: Layer;
  readonly art: Art;
  key: string | null;
  /** Its words are made for another scale. */
  blunt: boolean;
}

/** Layers whose words are made anew in one frame after the scale changed: so few that no frame is held up. */
const SHARPENED_A_FRAME = 1;

/** The whole drawing, bottom to top. A layer is painted again only when its own key changes. */
export class Layers {
  readonly root = new Container();
  private painted: readonly Painted[] = [];
  private readonly layers = allLayers();

  constructor(
    tokens: Tokens,
    private readonly resolution: () => number,
  ) {
    this.dress(tokens);
  }

  /** Starts the drawing over in other colours. */
  dress(tokens: Tokens): void {
    for (const { art } of this.painted) art.destroy();
    this.painted = this.layers.map((layer) => ({
      layer,
      art: new Art(tokens, this.resolution),
      key: null,
      blunt: false,
    }));
    this.root.removeChildren();
    for (const { art } of this.painted) this.root.addChild(art.root);
  }

  /** Forgets what is painted, so that the next frame paints all of it (new size, fonts arrived, surface restored). */
  stale(): void {
    for (const each of this.painted) each.key = null;
  }

  /** The scale is another: makes all words anew for it, a layer at each frame. */
  sharpen(): void {
    // One without words waits for no turn, so that the words on the others are sharp the sooner.
    for (const each of this.painted) each.blunt = each.art.hasWords;
  }

  /** How many there are. */
  get count(): number {
    return this.layers.length;
  }

  /** Paints what changed, of all layers or of the lowest so many; true when anything did. */
  draw(frame: Frame, lowest = this.count): boolean {
    let changed = false;
    let sharpened = 0;
    for (const each of this.painted.slice(0, lowest)) {
      const key = each.layer.key(frame);
      const anew = each.blunt && sharpened < SHARPENED_A_FRAME;
      if (key === each.key && !anew) continue;
      if (anew) sharpened += 1;
      each.blunt = false;
      each.key = key;
      each.art.wipe();
      const tool = TOOL_OF_LAYER[each.layer.name];
      if (tool === undefined || isThere(frame.observation, tool)) each.layer.paint(each.art, frame);
      changed = true;
    }
    return changed;
  }

  destroy(): void {
    for (const { art } of this.painted) art.destroy();
    this.root.destroy();
  }
}
