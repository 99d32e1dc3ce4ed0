/** A map that forgets its oldest entry when it is full, so that a door that runs for months does not grow. */
export class BoundedMap<V> {
  readonly #entries = new Map<string, V>();
  readonly #most: number;

  constructor(most: number) {
    this.#most = most;
  }

  get(key: string): V | undefined {
    return this.#entries.get(key);
  }

  has(key: string): boolean {
    return this.#entries.has(key);
  }

  set(key: string, value: V): void {
    this.#entries.delete(key);
    this.#entries.set(key, value);
    const [oldest] = this.#entries.keys();
    if (this.#entries.size > this.#most && oldest !== undefined) this.#entries.delete(oldest);
  }

  delete(key: string): void {
    this.#entries.delete(key);
  }
}
