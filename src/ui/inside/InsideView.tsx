import type { RigId } from '../../sim/devices/BenchSurface.ts';
import type { InsideObservation, Observation } from '../../sim/world/Observation.ts';
import { chamberAir, circuitInside, type MovingPart, partsInside } from '../../text/describeInside.ts';
import { fixed, shownVacuum } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { Cutaway } from './Cutaway.tsx';
import { CHAMBERS, type Chamber, FLAP_CHAMBERS, FLAP_PARTS } from './chamberLetters.ts';
import { FlapCutaway } from './flap/FlapCutaway.tsx';
import './inside.css';
import { LEGEND_KPA, pressureTint } from './pressureTint.ts';

interface Inside {
  readonly Drawing: typeof Cutaway;
  readonly chambers: readonly Chamber[];
  /** What moves in it; everything that may where it is left out. */
  readonly parts?: readonly MovingPart[];
}

/** How each rig's unit looks inside. */
const INSIDES: Readonly<Record<RigId, Inside>> = {
  'leak-detection-pump': { Drawing: Cutaway, chambers: CHAMBERS },
  'flap-actuator': { Drawing: FlapCutaway, chambers: FLAP_CHAMBERS, parts: FLAP_PARTS },
};

/**
 * The unit cut open, its parts as they stand, its air by pressure, with the same in words and numbers. `seen` is the
 * bench of the same moment. For walkthroughs and the debrief only.
 */
export function InsideView(props: {
  readonly inside: InsideObservation;
  readonly seen: Pick<Observation, 'sites' | 'unit' | 'surface'>;
}) {
  const { inside, seen } = props;
  const { Drawing, chambers, parts } = INSIDES[seen.surface.rig];
  return (
    <figure class="inside">
      <figcaption>
        <b>{say(seen.unit === 'truck' ? 'inside.title' : 'inside.knownGood')}</b>{' '}
        <span class="quiet">{say('inside.lead')}</span>
      </figcaption>
      <div class="inside-body">
        <Drawing inside={inside} seen={seen} />
        <div class="inside-lists">
          <section>
            <h3>{say('inside.partsTitle')}</h3>
            <dl>
              {[...partsInside(inside, parts), ...circuitInside(inside)].map(({ part, state }) => (
                <div key={part}>
                  <dt>{part}</dt>
                  <dd>{state}</dd>
                </div>
              ))}
            </dl>
          </section>
          <section>
            <h3>{say('inside.airTitle')}</h3>
            <dl>
              {chambers.map(({ name, letter, kPa }) => (
                <div key={name}>
                  <dt>
                    <span
                      class="inside-key"
                      style={{ background: pressureTint(kPa(inside)) }}
                      aria-hidden="true"
                    >
                      {letter}
                    </span>
                    {say(`inside.chambers.${name}`)}
                  </dt>
                  <dd>{chamberAir(kPa(inside))}</dd>
                </div>
              ))}
            </dl>
            <p class="inside-legend quiet" aria-hidden="true">
              {say('inside.legend')}
              {LEGEND_KPA.map((kPa) => (
                <span key={kPa}>
                  <i style={{ background: pressureTint(kPa) }} />
                  {fixed(shownVacuum(kPa), kPa > 0 && kPa < 5 ? 1 : 0)}
                </span>
              ))}
            </p>
          </section>
        </div>
      </div>
    </figure>
  );
}
