/** A slider with a key at either end: a finger slides, a glove taps, arrow keys step, and a reader says where it stands. */
interface StepSliderProps {
  readonly name: string;
  /** Of the keys: less, more. */
  readonly names: readonly [string, string];
  readonly range: readonly [least: number, most: number];
  readonly value: number;
  readonly spoken: string;
  readonly onChange: (value: number) => void;
}

export function StepSlider({ name, names, range: [least, most], value, spoken, onChange }: StepSliderProps) {
  const to = (next: number) => onChange(Math.max(least, Math.min(most, next)));
  return (
    <div className="step-slider">
      <span aria-hidden="true">{name}</span>
      <button type="button" aria-label={names[0]} onClick={() => to(value - 1)}>
        −
      </button>
      <input
        type="range"
        aria-label={name}
        aria-valuetext={spoken}
        min={least}
        max={most}
        step={1}
        value={value}
        onChange={(event) => to(Number(event.currentTarget.value))}
      />
      <button type="button" aria-label={names[1]} onClick={() => to(value + 1)}>
        +
      </button>
    </div>
  );
}
