import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { Tick } from '../base/ticks.ts';
import type { Settings } from '../platform/browser/settings.ts';
import type { UnitPort } from '../sim/devices/places.ts';
import { capital } from '../text/format.ts';
import { say } from '../text/translate.ts';
import { isLed } from '../training/scenario/modes.ts';
import { BenchHand, type HandNews } from '../ui/interaction/BenchHand.ts';
import type { Grip } from '../ui/interaction/Grip.ts';
import type { Box, Vec } from '../ui/interaction/layout/geometry.ts';
import { placeHotspots } from '../ui/interaction/layout/hotspots.ts';
import type { HotspotId } from '../ui/interaction/layout/PlacedHotspot.ts';
import type { ShelfTab } from '../ui/interaction/layout/shelfPlan.ts';
import type { Shortcut } from '../ui/interaction/shortcuts.ts';
import { sameTouch, type Touch } from '../ui/interaction/Touch.ts';
import { tighteningShare } from '../ui/interaction/tightening.ts';
import type { ViewName } from '../ui/interaction/views.ts';
import type { BenchInput } from '../ui/mirror/BenchInput.ts';
import { BenchViews } from '../ui/mirror/BenchViews.ts';
import { gripName, placeName } from '../ui/mirror/handWords.ts';
import type { Scene, SceneView } from '../ui/scene/SceneView.ts';
import { HappeningListener } from '../ui/sound/HappeningListener.ts';
import type { Voices } from '../ui/sound/Voices.ts';
import { BenchAnnouncer } from './BenchAnnouncer.ts';
import { BenchEvents } from './BenchEvents.ts';
import { justNow } from './justNow.ts';
import { nextTouch } from './nextTouch.ts';
import type { SittingDesk } from './SittingDesk.ts';

interface WorkbenchParts {
  readonly desk: SittingDesk;
  readonly settings: ReadonlySignal<Settings>;
  readonly reducedMotion: ReadonlySignal<boolean>;
  readonly voices: Voices;
  openReader(byKeys: boolean): void;
  openShortcuts(): void;
}

/** The bench in use: hand, drawing, sound and speech around one desk. */
export class Workbench implements BenchInput {
  readonly hand: BenchHand;
  readonly held: Signal<Grip | null> = signal(null);
  readonly shelf: Signal<ShelfTab>;
  readonly views = new BenchViews();
  readonly functionsKnown: BenchInput['functionsKnown'];
  readonly spoken = signal('');
  readonly observation: BenchInput['observation'];
  private readonly announcer = new BenchAnnouncer();
  private readonly events = new BenchEvents();
  private readonly listener: HappeningListener;
  private scene: Scene | null = null;
  standing = false;
  /** Where the pointer is, in pixels of the stage: it stays there while the view moves under it. */
  private pointer: Vec | null = null;
  private ringed: HotspotId | null = null;
  /** The clamp that is held, since when in running time (null until the next frame), and how far it has come. */
  private heldClamp: { readonly id: HotspotId; since: number | null; share: number } | null = null;
  private lastTick: Tick = 0;
  /** What the next touch was worked out for. */
  private touchFor: readonly unknown[] = [];
  /** The view in which lies what a step asks for, while it is out of sight. */
  readonly askedView: Signal<ViewName | null> = signal(null);

  constructor(private readonly parts: WorkbenchParts) {
    this.observation = parts.desk.observation;
    this.functionsKnown = parts.desk.functionsKnown;
    this.listener = new HappeningListener(parts.voices);
    this.hand = new BenchHand({
      observe: () => parts.desk.now(),
      act: (action) => parts.desk.act(action) === null,
      news: (news) => this.tell(news),
      changed: () => {
        this.held.value = this.hand.holding;
        this.shelf.value = this.hand.shelf;
      },
    });
    this.shelf = signal(this.hand.shelf);
  }

  /** The bench can be worked: it is drawn, or stands there in words where it cannot be. */
  stands(): void {
    this.standing = true;
    this.parts.voices.benchStands();
  }

  /** Gives the bench its host, and a drawing when there is one. */
  attach(host: HTMLElement | null, scene: Scene | null): void {
    this.scene = scene;
    this.views.attach(host);
    this.look();
  }

  resize(): void {
    this.scene?.resize();
    this.views.resize();
    this.look();
  }

  /** Tells the drawing how the sheet lies; the mirror follows the same signal. */
  private look(): void {
    this.scene?.look(this.views.fit.peek(), this.views.goal.peek());
  }

  /** One frame: the drawing, what is heard and what is spoken. */
  frame(seconds: number): void {
    const { desk, settings } = this.parts;
    const seen = desk.now();
    this.listener.hear(justNow(seen, this.lastTick));
    this.lastTick = seen.tick;
    const event = this.events.since(seen);
    if (event !== null) desk.happened(event);
    this.holdClamp(seconds);
    this.leadHand();
    const sentence = this.announcer.hear(seen, seconds, settings.peek().announce);
    // The same words again would change nothing on the page, and nothing would be heard of the second time.
    if (sentence !== null)
      this.spoken.value = sentence === this.spoken.peek() ? `${sentence}\u200B` : sentence;
    this.views.frame(
      seconds,
      this.parts.reducedMotion.peek(),
      this.held.peek() === null ? null : this.pointer,
    );
    this.look();
    this.scene?.draw(seen, this.view(), seconds);
  }

  toBench(clientX: number, clientY: number): Vec {
    return this.views.toBench(clientX, clientY);
  }

  pointAt(at: Vec | null): void {
    this.pointer = at === null ? null : this.views.toHostPixels(at);
  }

  ring(id: HotspotId | null): void {
    this.ringed = id;
  }

  tighten(id: HotspotId | null): void {
    this.heldClamp = id === null ? null : { id, since: null, share: 0 };
  }

  pumpHandle(position: number): void {
    this.parts.desk.act({ kind: 'pump-handle', position });
  }

  release(open: boolean): void {
    this.parts.desk.act({ kind: 'release', open });
  }

  openReader(byKeys: boolean): void {
    this.parts.openReader(byKeys);
  }

  readNow(): void {
    const sentence = this.announcer.readNow(this.parts.desk.now());
    this.parts.desk.tell(sentence);
  }

  /** Puts back what is held; with an empty hand, what was done last. */
  undo(): void {
    if (this.hand.holding !== null) this.hand.putBack();
    else this.parts.desk.undo();
  }

  /** A single-letter shortcut. */
  shortcut(which: Shortcut): void {
    const { desk } = this.parts;
    const seen = desk.now();
    switch (which) {
      case 'log':
        return desk.logReading();
      case 'wait':
        return desk.wait(10);
      case 'wait-steady':
        return desk.waitSteady();
      case 'read':
        return this.readNow();
      case 'help':
        return this.parts.openShortcuts();
      case 'key': {
        const position = seen.key === 'off' ? 'on' : 'off';
        if (desk.act({ kind: 'set-key', position }) === null) {
          desk.tell(say('hand.keyIs', { position: say(`key.${position}`) }));
        }
        return;
      }
      case 'stroke':
        desk.act({ kind: 'stroke', depth: 1 });
        return;
      case 'part':
        if (desk.act({ kind: seen.plug.mated ? 'part-plug' : 'mate-plug' }) === null) {
          desk.tell(capital(say(seen.plug.mated ? 'actions.part-plug' : 'actions.mate-plug')));
        }
        return;
      case 'jumper': {
        const on = !seen.jumper.switchedOn;
        if (desk.act({ kind: 'switch-jumper', on }) === null) {
          desk.tell(capital(say('actions.switch-jumper', { state: say(on ? 'onOff.on' : 'onOff.off') })));
        }
        return;
      }
    }
  }

  /** A clamp that is held on tightens: from loose to hand tight soon, past that only when its ring is full. */
  private holdClamp(seconds: number): void {
    const held = this.heldClamp;
    if (held === null) return;
    held.since ??= seconds;
    held.share = tighteningShare(seconds - held.since);
    const { clamps } = this.parts.desk.now();
    const setting = clamps[clampPort(held.id)];
    if (setting === 'hand-tight' ? held.share < 1 : held.share === 0) return;
    this.heldClamp = null;
    if (setting === 'hand-tight') this.hand.overTighten(held.id);
    else if (setting === 'loose') this.hand.turn(held.id, 1);
  }

  /** Works out what a step asks to be touched next, as often as the panels are renewed and whenever the hand does something. */
  private leadHand(): void {
    const { desk } = this.parts;
    if (desk.card.steps.length === 0) return;
    const { holding, shelf } = this.hand;
    const now = [desk.observation.peek(), desk.step.peek(), holding, shelf, this.views.fit.peek()];
    if (now.every((each, i) => each === this.touchFor[i])) return;
    const moved = now.at(-1) !== this.touchFor.at(-1);
    this.touchFor = now;
    const todo = desk.stillToDo();
    const next = todo === null ? null : nextTouch(todo, desk.now(), { holding, shelf });
    const changed = !sameTouch(next, desk.touch.peek());
    if (changed) desk.touch.value = next;
    if (!changed && !moved) return;
    this.views.mean(this.placeOf(next));
    this.askedView.value = this.views.viewAsked();
  }

  private placeOf(touch: Touch | null): Box | null {
    if (touch?.kind !== 'bench') return null;
    const spots = placeHotspots(this.parts.desk.now(), this.hand.shelf);
    return spots.find(({ id }) => id === touch.at) ?? null;
  }

  private tightening(): SceneView['tightening'] {
    if (this.heldClamp === null || this.heldClamp.share === 0) return null;
    return { port: clampPort(this.heldClamp.id), share: this.heldClamp.share };
  }

  private view(): SceneView {
    const { desk, reducedMotion } = this.parts;
    const grip = this.held.peek();
    const touch = desk.touch.peek();
    return {
      held: heldThing(grip),
      pointer: this.pointer === null ? null : this.views.fromHost(this.pointer),
      shelf: this.shelf.peek(),
      ring: this.ringed,
      asked: touch?.kind === 'bench' ? touch.at : null,
      tightening: this.tightening(),
      targets: this.hand.lit(),
      showDigits: isLed(desk.card.mode),
      showFunctions: desk.functionsKnown.peek(),
      reducedMotion: reducedMotion.peek(),
      captions: true,
    };
  }

  private tell(news: HandNews): void {
    if (news.kind === 'tight-already') return this.parts.desk.tell(say('hand.tightAlready'));
    const thing = capital(gripName(news.grip));
    switch (news.kind) {
      case 'picked-up':
        return;
      case 'placed':
        return this.parts.desk.tell(
          news.target.kind === 'mat'
            ? say('hand.lifted', { thing })
            : say('hand.placed', { thing, place: small(placeName(news.target, news.grip)) }),
        );
      case 'put-back':
        return this.parts.desk.tell(say('hand.back', { thing }));
    }
  }
}

function clampPort(id: HotspotId): UnitPort {
  return id.slice('clamp:'.length) as UnitPort;
}

/** A name in the middle of a sentence; what begins with two capitals keeps them. */
function small(name: string): string {
  return /^.[A-Z]/.test(name) ? name : name.charAt(0).toLowerCase() + name.slice(1);
}

function heldThing(grip: Grip | null): SceneView['held'] {
  if (grip === null) return null;
  switch (grip.kind) {
    case 'lead':
      return { kind: 'end', end: grip.end };
    case 'fitting':
      return { kind: 'fitting', item: grip.item };
    case 'pin':
      return { kind: 'pin' };
    case 'drag-gauge':
      return { kind: 'drag-gauge' };
    case 'sense':
      return { kind: 'sense', how: grip.how };
  }
}
