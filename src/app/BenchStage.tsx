import { type ReadonlySignal, useSignal, useSignalEffect } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { say } from '../text/translate.ts';
import { isUndo, shortcutOf, takesLetters } from '../ui/interaction/shortcuts.ts';
import { viewOfKey } from '../ui/interaction/views.ts';
import { bringIntoWindow } from '../ui/mirror/bringIntoWindow.ts';
import { Mirror } from '../ui/mirror/Mirror.tsx';
import { useStageView } from '../ui/mirror/useStageView.ts';
import { ViewBar } from '../ui/mirror/ViewBar.tsx';
import '../ui/mirror/views.css';
import type { RendererKind } from '../ui/scene/renderer/RendererKind.ts';
import type { Scene } from '../ui/scene/SceneView.ts';
import type { ThemeName } from '../ui/theme/tokens.ts';
import { useLanguageTurn } from './useLanguageTurn.ts';
import type { Workbench } from './Workbench.ts';

interface BenchStageProps {
  readonly bench: Workbench;
  readonly theme: ReadonlySignal<ThemeName>;
  readonly letters: boolean;
  readonly renderer: RendererKind | null;
  readonly onTrouble: (trouble: 'context-lost' | 'no-graphics') => void;
  /** The bench is one part of a page on which other things are written: it takes neither the focus nor keys that are theirs. */
  readonly beside?: boolean;
}

/** The drawn bench with its mirror over it, in the middle of whatever room it gets. */
export function BenchStage({ bench, theme, letters, renderer, onTrouble, beside = false }: BenchStageProps) {
  const host = useRef<HTMLDivElement>(null);
  const scene = useRef<Scene | null>(null);
  const bare = useSignal(false);
  useEffect(() => {
    const element = host.current;
    if (element === null) return;
    let gone = false;
    const goBare = (): void => {
      bare.value = true;
      bench.stands();
      onTrouble('no-graphics');
    };
    const draw = async (asked: RendererKind | null): Promise<void> => {
      const { createScene } = await import('../ui/scene/createScene.ts');
      const made = await createScene(element, { renderer: asked, gradually: true });
      if (gone) return made.destroy();
      scene.current = made;
      made.setTheme(theme.peek());
      made.onContextLost((lost) => {
        if (!lost || scene.current !== made) return;
        onTrouble('context-lost');
        bench.attach(element, null);
        made.destroy();
        void draw('canvas').catch(goBare);
      });
      bench.attach(element, made);
      bench.stands();
    };
    bench.attach(element, null);
    draw(renderer).catch(goBare);
    const sized = new ResizeObserver(() => bench.resize());
    sized.observe(element);
    return () => {
      gone = true;
      sized.disconnect();
      bench.attach(null, null);
      scene.current?.destroy();
      scene.current = null;
    };
  }, [bench, bare, onTrouble, renderer, theme]);
  useSignalEffect(() => {
    // Read before the question whether there is a scene yet, or the first run would follow nothing.
    const name = theme.value;
    scene.current?.setTheme(name);
  });
  useLanguageTurn(() => {
    scene.current?.reword();
    bench.spoken.value = '';
  });
  const stage = useRef<HTMLDivElement>(null);
  // The work begins here: keys and shortcuts belong to the bench without a walk through the header first.
  useEffect(() => {
    if (beside) return;
    window.scrollTo(0, 0);
    stage.current?.focus({ preventScroll: true });
    // Where the window is too low for both, the head of the page makes room for the bench.
    const area = stage.current?.closest('.bench-area');
    if (area) bringIntoWindow(area);
  }, [beside]);
  useStageView(stage, bench);
  // On the whole screen, so that the words on its buttons are true wherever the focus is.
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent): void => {
      if (event.defaultPrevented || document.querySelector('dialog[open]') !== null) return;
      if (beside && !isWithin(stage.current?.parentElement, event.target)) return;
      if (event.key === 'Escape' && bench.hand.holding !== null) {
        bench.hand.putBack();
        event.preventDefault();
        return;
      }
      const writes = event.target instanceof HTMLElement && takesLetters(event.target);
      if (isUndo(event) && !writes) {
        event.preventDefault();
        bench.undo();
        return;
      }
      const view = letters && !writes ? viewOfKey(event) : null;
      if (view !== null) {
        event.preventDefault();
        bench.views.go(view);
        return;
      }
      const shortcut = letters && !writes ? shortcutOf(event) : null;
      if (shortcut === null) return;
      event.preventDefault();
      bench.shortcut(shortcut);
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [bench, letters, beside]);
  const near = bench.views.view.value !== 'whole';
  const stageClass = `stage${bare.value ? ' stage-bare' : ''}${near ? ' stage-near' : ''}`;
  return (
    <>
      <div ref={stage} class={stageClass} tabIndex={-1}>
        <div ref={host} class="stage-host" />
        <div class="stage-overlay">
          <h2 class="visually-hidden">{say('bench.region')}</h2>
          <Mirror input={bench} />
        </div>
        <p class="visually-hidden" role="status" aria-atomic="true">
          {bench.spoken.value}
        </p>
      </div>
      {!bare.value && <ViewBar views={bench.views} letters={letters} asked={bench.askedView} />}
    </>
  );
}

function isWithin(element: Element | null | undefined, target: EventTarget | null): boolean {
  return target instanceof Node && element?.contains(target) === true;
}
