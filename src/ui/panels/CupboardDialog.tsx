import { useSignal } from '@preact/signals';
import { type ItemId, TOOL_ITEMS } from '../../sim/devices/items.ts';
import { capital, money } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { areAtHand, isAtHand, type ToolsAtHand, toolsOfAction } from '../../training/scenario/benchTools.ts';
import type { Desk } from './Desk.ts';
import { Dialog } from './Dialog.tsx';
import { FitDialog } from './FitDialog.tsx';
import { type ItemGroup, itemGroupsOf } from './itemGroups.ts';

/** The parts cupboard: the known-good unit, parts for the truck, tools of the bench. Before the verdict no parts. */
export function CupboardDialog({ desk, onClose }: { readonly desk: Desk; readonly onClose: () => void }) {
  const chosen = useSignal<ItemId | null>(null);
  const { tools } = desk.card;
  const toolsOnly = desk.phase.value !== 'repair';
  if (chosen.value !== null) {
    return (
      <FitDialog
        desk={desk}
        item={chosen.value}
        onBack={() => {
          chosen.value = null;
        }}
        onClose={onClose}
      />
    );
  }
  const groups = itemGroupsOf(desk.observation.peek().surface)
    .map(({ group, items }) => ({
      group,
      items: items.filter(
        (id): id is ItemId =>
          id !== 'nothing-wrong' && (!toolsOnly || TOOL_ITEMS.includes(id)) && isToBeHad(id, tools),
      ),
    }))
    .filter(({ items }) => items.length > 0);
  return (
    <Dialog title={say('cupboard.title')} onClose={onClose} wide={!toolsOnly}>
      {isAtHand(tools, 'known-good-unit') && <KnownGood desk={desk} onClose={onClose} />}
      <p class="cupboard-lead">{say(toolsOnly ? 'cupboard.toolsLead' : 'cupboard.lead')}</p>
      <div class="cupboard-groups">
        {groups.map(({ group, items }) => (
          <Shelf key={group} group={group} items={items} desk={desk} onChoose={(id) => (chosen.value = id)} />
        ))}
      </div>
    </Dialog>
  );
}

/** A new one of a tool that the job does not have is not in the cupboard either. */
function isToBeHad(item: ItemId, tools: ToolsAtHand): boolean {
  return areAtHand(tools, toolsOfAction({ kind: 'renew', item }));
}

interface ShelfProps {
  readonly group: ItemGroup;
  readonly items: readonly ItemId[];
  readonly desk: Desk;
  readonly onChoose: (item: ItemId) => void;
}

function Shelf({ group, items, desk, onChoose }: ShelfProps) {
  const renewed = desk.renewed.value;
  return (
    <section class="cupboard-group">
      <h3>{say(`itemGroups.${group}`)}</h3>
      <ul>
        {items.map((item) => {
          const price = desk.priceOf(item);
          const name = say(`items.${item}`);
          return (
            <li key={item}>
              <button
                type="button"
                aria-label={`${say('cupboard.fit', { item: name })}, ${priceWords(price)}`}
                onClick={() => onChoose(item)}
              >
                <span>
                  {capital(name)}
                  {renewed.some((one) => one.item === item) && (
                    <span class="tag">{say('cupboard.fittedBefore')}</span>
                  )}
                </span>
                <b>{priceWords(price)}</b>
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

function priceWords(price: number): string {
  return price === 0 ? say('cupboard.free') : money(price);
}

/** Puts the known-good unit in the unit's place on the bench, and back. */
function KnownGood({ desk, onClose }: { readonly desk: Desk; readonly onClose: () => void }) {
  const { unit, plug, sites, surface } = desk.observation.value;
  const to = unit === 'truck' ? 'known-good' : 'truck';
  const bare = surface.ports.every((port) => sites[port] === null);
  const free = !plug.mated && bare;
  const swap = (): void => {
    if (desk.act({ kind: 'swap-unit', to }) === null) {
      desk.tell(say('cupboard.swapped', { unit: say(`units.${to}`) }));
    }
    onClose();
  };
  return (
    <section class="known-good" aria-labelledby="known-good-title">
      <div>
        <h3 id="known-good-title">{say('cupboard.known')}</h3>
        <p>{say('cupboard.knownText')}</p>
        <p class="quiet">{say('cupboard.here', { unit: say(`units.${unit}`) })}</p>
      </div>
      <div class="known-good-act">
        <button type="button" class="act" disabled={!free} onClick={swap}>
          {say(unit === 'truck' ? 'cupboard.swapIn' : 'cupboard.swapBack')}
        </button>
        {!free && <p class="quiet">{say(swapNeeds(plug.mated, bare))}</p>}
      </div>
    </section>
  );
}

/** Only what is still to be done. */
function swapNeeds(mated: boolean, bare: boolean) {
  if (mated && !bare) return 'cupboard.swapNeeds';
  return mated ? 'cupboard.swapNeedsPlug' : 'cupboard.swapNeedsBarbs';
}
