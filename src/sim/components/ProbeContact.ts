import type { StateReader } from '../network/StateReader.ts';
import { Conductor } from './Conductor.ts';
import { positive } from './electricalLimits.ts';

/** A lead's tip laid on one of many nodes: 5 mΩ where it touches (common practice, no source), nothing where it does not. */
export class ProbeContact extends Conductor {
  private target: number | null = null;
  private contactResistance: number;

  constructor(tip: number, contactOhms = 0.005) {
    super(tip, tip);
    this.contactResistance = positive(contactOhms, 'contact resistance');
  }

  /** The node the tip touches, or null in the air. */
  get attachedTo(): number | null {
    return this.target;
  }

  get contactOhms(): number {
    return this.contactResistance;
  }

  set contactOhms(value: number) {
    this.contactResistance = positive(value, 'contact resistance');
    if (this.target !== null) this.siemens = 1 / value;
  }

  attach(node: number | null): void {
    if (node === this.target) return;
    this.holdAmps();
    this.target = node;
    this.b = node ?? this.a;
    this.siemens = node === null ? 0 : 1 / this.contactResistance;
    // From one node to another the conductance is the same but its place is not.
    this.touch();
  }

  override save(out: number[]): void {
    super.save(out);
    out.push(this.target ?? -1, this.contactResistance);
  }

  override load(from: StateReader): void {
    super.load(from);
    const node = from.next();
    this.contactOhms = from.next();
    this.attach(node < 0 ? null : node);
  }
}
