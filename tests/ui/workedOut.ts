/** A sum worked out as it is written on the page: × ÷ − ², roots, and angles in degrees. */

/** @returns null where the line says something in words: a rounding, a comparison */
export function workedOut(line: string): number | null {
  const tokens = line.match(/\d+(?:\.\d+)?|arctan|sin|cos|tan|[√()+−×÷²°]|[^\s]/g) ?? [];
  if (tokens.some((token) => !/^(\d+(\.\d+)?|arctan|sin|cos|tan|[√()+−×÷²°])$/.test(token))) return null;
  const reader = new Reader(tokens);
  const value = reader.sum();
  if (!reader.isDone) throw new Error(`cannot be read as a sum: ${line}`);
  return value;
}

const DEGREE = Math.PI / 180;

class Reader {
  private at = 0;

  constructor(private readonly tokens: readonly string[]) {}

  get isDone(): boolean {
    return this.at === this.tokens.length;
  }

  sum(): number {
    let value = this.product();
    for (;;) {
      if (this.take('+')) value += this.product();
      else if (this.take('−')) value -= this.product();
      else return value;
    }
  }

  private product(): number {
    let value = this.factor();
    for (;;) {
      if (this.take('×')) value *= this.factor();
      else if (this.take('÷')) value /= this.factor();
      else return value;
    }
  }

  private factor(): number {
    if (this.take('−')) return -this.factor();
    if (this.take('√')) return Math.sqrt(this.factor());
    if (this.take('arctan')) return Math.atan(this.factor()) / DEGREE;
    for (const name of ['sin', 'cos', 'tan'] as const) if (this.take(name)) return Math[name](this.factor() * DEGREE);
    let value = this.bare();
    while (this.take('²')) value **= 2;
    this.take('°');
    return value;
  }

  private bare(): number {
    if (this.take('(')) {
      const value = this.sum();
      if (!this.take(')')) throw new Error('a bracket is not closed');
      return value;
    }
    const value = Number(this.tokens[this.at]);
    this.at += 1;
    return value;
  }

  private take(token: string): boolean {
    if (this.tokens[this.at] !== token) return false;
    this.at += 1;
    return true;
  }
}
