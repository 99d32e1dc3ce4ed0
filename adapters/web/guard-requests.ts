import type { MiddlewareHandler } from "hono";
import { secureHeaders } from "hono/secure-headers";

/** Everything comes from this server, nothing is inline, nobody may frame the page, no form leaves it. */
export const sendSecureHeaders: MiddlewareHandler = secureHeaders({
  contentSecurityPolicy: {
    defaultSrc: ["'none'"],
    scriptSrc: ["'self'"],
    styleSrc: ["'self'"],
    // Pictures that were chosen and not sent yet are shown out of the browser's own memory.
    imgSrc: ["'self'", "blob:"],
    connectSrc: ["'self'"],
    formAction: ["'none'"],
    baseUri: ["'none'"],
    frameAncestors: ["'none'"],
  },
  xFrameOptions: "DENY",
  // Plain HTTP on the loopback address: a promise of HTTPS would break every other server on this machine.
  strictTransportSecurity: false,
});

/**
 * Answers only requests that name this server as its host, so that no page of another site reaches it through a name
 * that it makes point here. Requests that change something must come from this server's own page.
 */
export function guardRequests(hosts: () => readonly string[]): MiddlewareHandler {
  return async (c, next) => {
    const named = [c.req.header("host"), new URL(c.req.url).host].filter((host) => host !== undefined);
    const isOurs = (host: string) => hosts().includes(host.toLowerCase());
    if (!named.every(isOurs)) return c.text(`This page answers only at http://${hosts()[0]}/.\n`, 403);
    if (c.req.method !== "GET" && c.req.method !== "HEAD" && !isSameOrigin(c.req.header("origin"), hosts()))
      return c.text(`Messages are taken only from the page at http://${hosts()[0]}/.\n`, 403);
    return await next();
  };
}

function isSameOrigin(origin: string | undefined, hosts: readonly string[]): boolean {
  return origin !== undefined && hosts.some((host) => origin.toLowerCase() === `http://${host}`);
}
