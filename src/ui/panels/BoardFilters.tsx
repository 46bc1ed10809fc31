import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import type { BoardCard } from '../../training/scenario/BoardCard.ts';
import { BoardSelect } from './BoardSelect.tsx';
import {
  type BoardFilter,
  boardFilter,
  isNarrowed,
  itemsOffered,
  NO_FILTER,
  skillsOffered,
} from './boardFilter.ts';
import { FoldKey } from './FoldKey.tsx';

const LEVELS = [1, 2, 3, 4] as const;

interface BoardFiltersProps {
  readonly cards: readonly BoardCard[];
  /** How many of them are shown. */
  readonly shown: number;
}

/** Narrows the board: by words, by level, by what a work order puts in question, by what a job trains. */
export function BoardFilters({ cards, shown }: BoardFiltersProps) {
  const filter = boardFilter.value;
  const words = useRef<HTMLInputElement>(null);
  // The button that forgets goes with what it took away: the focus goes on to where the next search begins, once that is there.
  const forgotten = useRef(false);
  useEffect(() => {
    if (forgotten.current) words.current?.focus();
    forgotten.current = false;
  });
  const set = (change: Partial<BoardFilter>): void => {
    boardFilter.value = { ...boardFilter.peek(), ...change };
  };
  const narrowed = isNarrowed(filter);
  const groups = itemsOffered(cards);
  // In a narrow window the fields wait behind a key, so that the jobs come first. That some are left out is said in any case.
  const unfolded = useSignal(narrowed);
  return (
    <>
      <search
        class={unfolded.value ? 'board-filters board-filters-unfolded' : 'board-filters'}
        aria-label={say('boardFilter.title')}
      >
        <FoldKey class="board-filters-fold" words={say('boardFilter.title')} unfolded={unfolded} />
        <label class="board-filter board-filter-words">
          <span>{say('boardFilter.words')}</span>
          <input
            ref={words}
            type="search"
            value={filter.words}
            maxLength={60}
            onInput={({ currentTarget }) => set({ words: currentTarget.value })}
          />
        </label>
        <BoardSelect
          label={say('boardFilter.level')}
          all={say('boardFilter.allLevels')}
          value={filter.level === null ? '' : String(filter.level)}
          onChoose={(value) => set({ level: LEVELS.find((level) => String(level) === value) ?? null })}
        >
          {LEVELS.map((level) => (
            <option key={level} value={level}>
              {say('board.level', { level })}
            </option>
          ))}
        </BoardSelect>
        {groups.length > 0 && (
          <BoardSelect
            label={say('boardFilter.item')}
            all={say('boardFilter.allItems')}
            value={filter.item ?? ''}
            onChoose={(value) =>
              set({ item: groups.flatMap(({ items }) => items).find((item) => item === value) ?? null })
            }
          >
            {groups.map(({ group, items }) => (
              <optgroup key={group} label={say(`itemGroups.${group}`)}>
                {items.map((item) => (
                  <option key={item} value={item}>
                    {say(item === 'unit' ? 'boardFilter.unit' : `items.${item}`)}
                  </option>
                ))}
              </optgroup>
            ))}
          </BoardSelect>
        )}
        <BoardSelect
          label={say('boardFilter.skill')}
          all={say('boardFilter.allSkills')}
          value={filter.skill ?? ''}
          onChoose={(value) => set({ skill: skillsOffered(cards).find((skill) => skill === value) ?? null })}
        >
          {skillsOffered(cards).map((skill) => (
            <option key={skill} value={skill}>
              {say(`boardFilter.skills.${skill}`)}
            </option>
          ))}
        </BoardSelect>
        {filter.item !== null && <p class="quiet board-filter-note">{say('boardFilter.itemNote')}</p>}
      </search>
      <p class="board-filter-count">
        <span role="status">
          {narrowed
            ? shown === 0
              ? say('boardFilter.none')
              : say('boardFilter.shown', { count: shown, all: cards.length })
            : ''}
        </span>
        {narrowed && (
          <button
            type="button"
            class="plain"
            onClick={() => {
              unfolded.value = true;
              set(NO_FILTER);
              forgotten.current = true;
            }}
          >
            {say('boardFilter.clear')}
          </button>
        )}
      </p>
    </>
  );
}
