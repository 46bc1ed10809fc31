import type { FaultEntry } from '../../../sim/faults/Fault.ts';
import { say } from '../../../text/translate.ts';
import { pathOf } from '../../../training/draft/rawText.ts';
import { describedBy, type FieldProps, Problems } from '../fields/Field.tsx';
import { fieldId } from '../fieldWords.ts';
import { useTyped } from '../useTyped.ts';
import { severityFigure } from './severityFigure.ts';

interface SeverityProps extends FieldProps {
  readonly fault: FaultEntry;
}

/** How bad a fault is; or between what and what, where each seat has a degree of its own. */
export function Severities({ book, path, fault }: SeverityProps) {
  const upTo = `${path}.severity-to`;
  const ranged = book.draft.value.form.at(pathOf(upTo)).kind !== 'absent';
  const what = say(fault.intermittent === 'each-trial' ? 'backRoom.chance' : 'backRoom.severity');
  const turn = (on: boolean): void => {
    const place = pathOf(upTo);
    book.edit([on ? { kind: 'set', path: place, value: 1 } : { kind: 'remove', path: place }], {
      kind: 'changed',
      path: upTo,
    });
  };
  return (
    <>
      <Severity
        book={book}
        path={`${path}.severity`}
        fault={fault}
        label={ranged ? say('backRoom.from', { what }) : what}
      />
      {ranged && <Severity book={book} path={upTo} fault={fault} label={say('backRoom.upTo', { what })} />}
      <div class="field field-switch">
        <label>
          <input
            type="checkbox"
            id={fieldId(`${path}.ranged`)}
            checked={ranged}
            onChange={(event) => turn(event.currentTarget.checked)}
          />
          <span>{say('backRoom.eachSeat')}</span>
        </label>
      </div>
    </>
  );
}

/** From the mildest degree to the worst, with the figure that it stands for. */
function Severity({ book, path, fault, label }: SeverityProps & { readonly label: string }) {
  const raw = book.draft.value.form.at(pathOf(path));
  const drafted = raw.kind === 'number' ? Math.min(Math.max(raw.number, 0), 1) : 0;
  const [shown, setTyped] = useTyped(book, String(drafted));
  const share = Number(shown);
  const figure = severityFigure(fault, share);
  return (
    <div class="field severity">
      <label for={fieldId(path)}>
        {label}
        <output class="field-aside">{figure}</output>
      </label>
      <div class="severity-scale">
        <span aria-hidden="true">{say('backRoom.mild')}</span>
        <input
          type="range"
          id={fieldId(path)}
          min={0}
          max={1}
          step={0.05}
          value={share}
          aria-valuetext={say('backRoom.severityIs', { share: Math.round(share * 100), figure })}
          onInput={(event) => {
            setTyped(event.currentTarget.value);
            book.edit(
              [{ kind: 'set', path: pathOf(path), value: Number(event.currentTarget.value) }],
              { kind: 'changed', path },
              'writing',
            );
          }}
          onChange={() => book.pause()}
          {...describedBy(book, path)}
        />
        <span aria-hidden="true">{say('backRoom.worst')}</span>
      </div>
      <Problems book={book} path={path} />
    </div>
  );
}
