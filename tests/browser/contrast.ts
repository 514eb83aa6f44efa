/** From what was painted to a ratio of lightness, as the accessibility guidelines reckon it. */
import type { Painted } from './paint';

type Colour = readonly [red: number, green: number, blue: number, alpha: number];

export function ratioOf({ color, opacity, under }: Painted): number {
  const ground = under.map(read).reduceRight<Colour>((below, above) => over(above, below), [255, 255, 255, 1]);
  const [red, green, blue, alpha] = read(color);
  const letters = over([red, green, blue, alpha * opacity], ground);
  const [lighter, darker] = [lightness(letters), lightness(ground)].sort((a, b) => b - a) as [number, number];
  return (lighter + 0.05) / (darker + 0.05);
}

function over([red, green, blue, alpha]: Colour, below: Colour): Colour {
  const mix = (one: number, other: number) => one * alpha + other * (1 - alpha);
  return [mix(red, below[0]), mix(green, below[1]), mix(blue, below[2]), 1];
}

function lightness([red, green, blue]: Colour): number {
  const [r, g, b] = [red, green, blue].map((part) => {
    const share = part / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** `rgb(26, 31, 36)`, `rgba(0, 0, 0, 0)`, and what comes of mixing: `color(srgb 0.1 0.2 0.3 / 0.5)`. */
function read(text: string): Colour {
  if (text === 'white') return [255, 255, 255, 1];
  const numbers = (text.match(/-?[\d.]+(?:e-?\d+)?/g) ?? []).map(Number);
  const [red, green, blue, alpha = 1] = numbers;
  if (red === undefined || green === undefined || blue === undefined) throw new Error(`No colour: ${text}`);
  if (text.startsWith('rgb')) return [red, green, blue, alpha];
  if (text.startsWith('color(srgb')) return [red * 255, green * 255, blue * 255, alpha];
  throw new Error(`No colour that is known here: ${text}`);
}
