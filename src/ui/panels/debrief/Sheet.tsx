import type { ComponentChildren } from 'preact';
import { say } from '../../../text/translate.ts';
import { type DebriefPart, partId } from './debriefParts.ts';

interface SheetProps {
  readonly part: DebriefPart;
  readonly class: string;
  readonly children: ComponentChildren;
}

/** A part of the debrief on a sheet of its own, which the list of parts leads to. */
export function Sheet({ part, class: kind, children }: SheetProps) {
  return (
    <section
      id={partId(part)}
      class={`sheet ${kind}`}
      tabIndex={-1}
      aria-label={say(`debriefParts.names.${part}`)}
    >
      {children}
    </section>
  );
}
