/** What the small pictures on a slip stand for. */
export type ActIconName = 'raise' | 'lower' | 'duplicate' | 'mirror' | 'hide' | 'show' | 'pin' | 'remove';

const PATHS: Readonly<Record<ActIconName, string>> = {
  raise: 'M3 9h9v8H3zM8 9V3h9v8h-5',
  lower: 'M8 3h9v8H8zM8 9H3v8h9v-6',
  duplicate: 'M3 3h10v10H3zM7 13v4h10V7h-4M10 10v4M8 12h4',
  mirror: 'M10 2v3M10 7v2M10 11v2M10 15v3M7.5 5v10H2zM12.5 5v10H18z',
  hide: 'M2 10c4-6.5 12-6.5 16 0-4 6.5-12 6.5-16 0zM10 7.6a2.4 2.4 0 1 1 0 4.8 2.4 2.4 0 0 1 0-4.8z',
  show: 'M2 10c4-6.5 12-6.5 16 0-4 6.5-12 6.5-16 0zM3 17 17 3',
  pin: 'M10 12v6M5.5 12h9M7.5 12V8L6 5V2h8v3l-1.5 3v4',
  remove: 'M3 5h14M8 5V3h4v2M5 5l1 13h8l1-13M8.5 8.5v6M11.5 8.5v6',
};

/** A small line drawing on a button; the button's own label says what it does. */
export function ActIcon({ name }: { name: ActIconName }) {
  return (
    <svg viewBox="0 0 20 20" aria-hidden="true">
      <path d={PATHS[name]} />
    </svg>
  );
}
