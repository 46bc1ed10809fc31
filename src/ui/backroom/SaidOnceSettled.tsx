import { useEffect, useState } from 'preact/hooks';

/** A sentence for whoever listens, said once nothing has changed for a while; null says nothing and leaves what was said. */
export function SaidOnceSettled(props: { readonly sentence: string | null; readonly afterMs: number }) {
  const { sentence, afterMs } = props;
  const [said, setSaid] = useState('');
  useEffect(() => {
    if (sentence === null) return;
    const timer = setTimeout(() => setSaid(sentence), afterMs);
    return () => clearTimeout(timer);
  }, [sentence, afterMs]);
  return (
    <p class="visually-hidden" role="status">
      {said}
    </p>
  );
}
