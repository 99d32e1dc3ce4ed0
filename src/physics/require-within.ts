/**
 * Throws unless a value lies in its range, both ends included; NaN never does. What people type is refused with a
 * sentence long before it comes here, so a throw is our own mistake.
 */
export function requireWithin(name: string, value: number, min: number, max: number): void {
  if (!(value >= min && value <= max)) throw new RangeError(`${name} is ${value}, outside ${min} to ${max}`);
}
