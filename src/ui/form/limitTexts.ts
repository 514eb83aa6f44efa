/** A limit as a job file writes it. */
import type { Limit, RuleUnit } from '../../core/codes/rulePack';

export function valueText({ value, unit }: Pick<Limit, 'value' | 'unit'>): string {
  if (isLength(unit)) return `${String(value)} ${unit}`;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return unit === '1:n' ? `1:${String(value)}` : String(value);
}

export function isLength(unit: RuleUnit | undefined): boolean {
  return unit === 'in' || unit === 'mm';
}
