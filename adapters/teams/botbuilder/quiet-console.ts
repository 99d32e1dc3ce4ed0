/** What the library prints of a refused token: the signing key in full, or the error of a token that has expired. */
const KEY = /-----BEGIN [A-Z ]*PUBLIC KEY-----/;
const TOKEN_ERRORS: ReadonlySet<string> = new Set(["JsonWebTokenError", "NotBeforeError", "TokenExpiredError"]);
let doorsOpen = 0;
let speak: typeof console.error | undefined;

/**
 * While a door is open, what the library prints of refused tokens is dropped; everything else is printed as ever. It is
 * told by what it says: following who prints through every promise costs a quarter of the answers a second.
 * @returns what to call when the door closes
 */
export function holdConsole(): () => void {
  doorsOpen++;
  if (speak === undefined) {
    const printed = console.error;
    speak = printed;
    console.error = (...parts: readonly unknown[]) => {
      if (!parts.some(isOfToken)) printed.apply(console, [...parts]);
    };
  }
  return releaseConsole;
}

function isOfToken(part: unknown): boolean {
  return typeof part === "string" ? KEY.test(part) : part instanceof Error && TOKEN_ERRORS.has(part.name);
}

function releaseConsole(): void {
  doorsOpen--;
  if (doorsOpen > 0 || speak === undefined) return;
  console.error = speak;
  speak = undefined;
}
