import { z } from "zod";
import { type DoorSettings, type Environment, faultsOf, port, portTaken, text } from "./settings-values.ts";

const TEAMS_APP_TYPES = ["SingleTenant", "MultiTenant", "UserAssignedMsi"] as const;

export interface TeamsDoorSettings {
  readonly appId: string;
  readonly appType: (typeof TEAMS_APP_TYPES)[number];
  readonly tenantId?: string;
  readonly password?: string;
  readonly certificate?: { readonly thumbprint: string; readonly keyFile: string };
  readonly host: string;
  readonly port: number;
  /** The tenant that is the company itself; any other gets a workspace of its own. */
  readonly ownTenant?: string;
  readonly warnings: readonly string[];
}

const GUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;
const APP_ADVICE =
  "copy the Application (client) ID of the bot, such as 12345678-1234-1234-1234-123456789abc; " +
  "without it nobody's identity would be checked, so the door stays closed";
const TENANT_ADVICE = "copy the Directory (tenant) ID, such as 12345678-1234-1234-1234-123456789abc";
const YES_OR_NO = "write yes or no";

const teams = z.object({
  TEAMS_APP_ID: z.string({ error: APP_ADVICE }).regex(GUID, APP_ADVICE),
  TEAMS_APP_PASSWORD: z.string().optional(),
  TEAMS_APP_TYPE: z
    .enum(TEAMS_APP_TYPES, { error: `write one of ${TEAMS_APP_TYPES.join(", ")}` })
    .prefault("SingleTenant"),
  TEAMS_TENANT_ID: z.string().regex(GUID, TENANT_ADVICE).toLowerCase().optional(),
  TEAMS_CERTIFICATE_THUMBPRINT: z
    .string()
    .regex(/^[0-9A-F]{40}$/i, "copy the thumbprint of the certificate, 40 digits and letters from A to F")
    .optional(),
  TEAMS_CERTIFICATE_KEY_FILE: text("the file of the certificate's private key", "teams-key.pem").optional(),
  TEAMS_IS_COMPANY: z.enum(["yes", "no"], { error: YES_OR_NO }).prefault("no"),
  TEAMS_HOST: text("the address to listen on", "127.0.0.1").prefault("127.0.0.1"),
  TEAMS_PORT: port(4602).prefault("4602"),
});
type Values = z.infer<typeof teams>;

export const TEAMS_NAMES: readonly string[] = Object.keys(teams.shape);
/** Any of these says that somebody wants the door open. */
const WANTED = ["TEAMS_APP_ID", "TEAMS_APP_PASSWORD", "TEAMS_TENANT_ID", "TEAMS_CERTIFICATE_THUMBPRINT"];

/** Reads the settings of the Teams door; `taken` are the ports of the other doors. */
export function readTeamsSettings(filled: Environment, taken: readonly number[]): DoorSettings<TeamsDoorSettings> {
  if (WANTED.every((name) => filled[name] === undefined))
    return {
      kind: "unset",
      because: "set TEAMS_APP_ID, TEAMS_APP_PASSWORD and TEAMS_TENANT_ID to open it (.env.example says how)",
    };
  const read = teams.safeParse(filled);
  if (!read.success) return { kind: "faulty", because: faultsOf(read.error, filled) };
  const because = [...missing(read.data), ...portTaken("TEAMS_PORT", read.data.TEAMS_PORT, taken)];
  if (because.length > 0) return { kind: "faulty", because };
  return { kind: "ready", settings: shape(read.data) };
}

/** What the type of app needs besides. */
function missing(values: Values): readonly string[] {
  const { TEAMS_APP_TYPE: type, TEAMS_TENANT_ID: tenant, TEAMS_APP_PASSWORD: password } = values;
  const thumbprint = values.TEAMS_CERTIFICATE_THUMBPRINT;
  const keyFile = values.TEAMS_CERTIFICATE_KEY_FILE;
  const hasCertificate = thumbprint !== undefined || keyFile !== undefined;
  const lines: string[] = [];
  if (type !== "MultiTenant" && tenant === undefined)
    lines.push(`TEAMS_TENANT_ID is not set: a ${type} app needs it; ${TENANT_ADVICE}.`);
  if (values.TEAMS_IS_COMPANY === "yes" && tenant === undefined && type === "MultiTenant")
    lines.push(`TEAMS_TENANT_ID is not set: TEAMS_IS_COMPANY=yes needs it; ${TENANT_ADVICE}.`);
  if (hasCertificate && thumbprint === undefined)
    lines.push("TEAMS_CERTIFICATE_THUMBPRINT is not set: it belongs to TEAMS_CERTIFICATE_KEY_FILE.");
  if (hasCertificate && keyFile === undefined)
    lines.push("TEAMS_CERTIFICATE_KEY_FILE is not set: it belongs to TEAMS_CERTIFICATE_THUMBPRINT.");
  if (type === "UserAssignedMsi" && (password !== undefined || hasCertificate))
    lines.push("TEAMS_APP_TYPE is UserAssignedMsi: such an app has no password and no certificate; remove them.");
  if (type !== "UserAssignedMsi" && password === undefined && !hasCertificate)
    lines.push("TEAMS_APP_PASSWORD is not set: copy the value (not the id) of a client secret of the app.");
  if (password !== undefined && hasCertificate)
    lines.push("TEAMS_APP_PASSWORD and a certificate are both set: keep one of them.");
  return lines;
}

function shape(values: Values): TeamsDoorSettings {
  const { TEAMS_APP_TYPE: appType, TEAMS_TENANT_ID: tenantId, TEAMS_APP_PASSWORD: password } = values;
  const { TEAMS_CERTIFICATE_THUMBPRINT: thumbprint, TEAMS_CERTIFICATE_KEY_FILE: keyFile } = values;
  const isOwn = values.TEAMS_IS_COMPANY === "yes" && tenantId !== undefined;
  return {
    appId: values.TEAMS_APP_ID,
    appType,
    host: values.TEAMS_HOST,
    port: values.TEAMS_PORT,
    ...(tenantId !== undefined && { tenantId }),
    ...(password !== undefined && { password }),
    ...(thumbprint !== undefined && keyFile !== undefined && { certificate: { thumbprint, keyFile } }),
    ...(isOwn && { ownTenant: tenantId }),
    warnings: appType === "MultiTenant" ? [MULTI_TENANT] : [],
  };
}
const MULTI_TENANT =
  "TEAMS_APP_TYPE is MultiTenant: people of every tenant may talk to this bot, each tenant in a workspace of its own, " +
  "and Microsoft has deprecated new bots of this type. SingleTenant is the usual choice.";
