/** The few signs of the bar, drawn as with a pencil; the word beside each says what it does. */
const PATHS = {
  new: 'M5 3h8l4 4v12H5zM11 9v7M7.5 12.5h7',
  undo: 'M8 5L4 9l4 4M4 9h9a5 5 0 0 1 0 10h-2',
  redo: 'M14 5l4 4-4 4M18 9H9a5 5 0 0 0 0 10h2',
  open: 'M3 18V5h6l2 3h8v3M3 18l3-7h15l-3 7z',
  save: 'M11 3v11M6 9l5 5 5-5M3 15v4h16v-4',
} as const;

export function Icon({ name }: { readonly name: keyof typeof PATHS }) {
  return (
    <svg className="icon" aria-hidden="true" viewBox="0 0 22 22" width="22" height="22">
      <path d={PATHS[name]} />
    </svg>
  );
}

/** The pitch board: a triangle with the stair's own slope. */
export function PitchMark() {
  return (
    <svg className="pitch-mark" aria-hidden="true" viewBox="0 0 40 30" width="40" height="30">
      <path d="M3 27L37 3v24z" />
    </svg>
  );
}
