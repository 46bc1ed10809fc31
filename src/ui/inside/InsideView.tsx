import type { InsideObservation, Observation } from '../../sim/world/Observation.ts';
import { chamberAir, circuitInside, partsInside } from '../../text/describeInside.ts';
import { fixed, shownVacuum } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { Cutaway } from './Cutaway.tsx';
import { CHAMBERS } from './chamberLetters.ts';
import './inside.css';
import { LEGEND_KPA, pressureTint } from './pressureTint.ts';

/**
 * The unit cut open, its parts as they stand, its air by pressure, with the same in words and numbers. `seen` is the
 * bench of the same moment. For walkthroughs and the debrief only.
 */
export function InsideView(props: {
  readonly inside: InsideObservation;
  readonly seen: Pick<Observation, 'sites' | 'unit'>;
}) {
  const { inside, seen } = props;
  return (
    <figure class="inside">
      <figcaption>
        <b>{say(seen.unit === 'truck' ? 'inside.title' : 'inside.knownGood')}</b>{' '}
        <span class="quiet">{say('inside.lead')}</span>
      </figcaption>
      <Cutaway inside={inside} seen={seen} />
      <div class="inside-lists">
        <section>
          <h3>{say('inside.partsTitle')}</h3>
          <dl>
            {[...partsInside(inside), ...circuitInside(inside)].map(({ part, state }) => (
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
            {CHAMBERS.map(({ name, letter, kPa }) => (
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
    </figure>
  );
}
