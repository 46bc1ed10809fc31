const NEXT = ['ArrowRight', 'ArrowDown'];
const LAST = ['ArrowLeft', 'ArrowUp'];

/** The index an arrow key moves to among `count` controls, around the ends; null for another key. */
export function rovedIndex(key: string, index: number, count: number): number | null {
  if (count === 0) return null;
  if (NEXT.includes(key)) return (index + 1) % count;
  if (LAST.includes(key)) return (index + count - 1) % count;
  if (key === 'Home') return 0;
  if (key === 'End') return count - 1;
  return null;
}
