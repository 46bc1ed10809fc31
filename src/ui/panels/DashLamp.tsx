/**
 * The yellow lamp of the dash as a small sign: lit it is full and has rays, dark it is an empty ring with a bar through it.
 * Words beside it say the same.
 */
export function DashLamp({ lit, small }: { readonly lit: boolean; readonly small?: boolean }) {
  const size = small ? 18 : 26;
  return (
    <svg
      class={lit ? 'dash-lamp dash-lamp-lit' : 'dash-lamp'}
      width={size}
      height={size}
      viewBox="0 0 26 26"
      aria-hidden="true"
    >
      {lit && (
        <path d="M13 1 V4 M13 22 V25 M1 13 H4 M22 13 H25 M4.5 4.5 L6.6 6.6 M19.4 19.4 L21.5 21.5 M21.5 4.5 L19.4 6.6 M6.6 19.4 L4.5 21.5" />
      )}
      <circle cx="13" cy="13" r="6.5" />
      {!lit && <path d="M9.5 13 H16.5" />}
    </svg>
  );
}
