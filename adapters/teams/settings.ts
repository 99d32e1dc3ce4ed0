const APP_TYPES = ["SingleTenant", "MultiTenant", "UserAssignedMsi"] as const;
type AppType = (typeof APP_TYPES)[number];

/** Settings of the Teams door as somebody typed them. */
export interface TeamsSettings {
  readonly appId?: string | undefined;
  /** SingleTenant when unset. */
  readonly appType?: string | undefined;
  readonly tenantId?: string | undefined;
  readonly password?: string | undefined;
  readonly certificate?: { readonly thumbprint: string; readonly privateKey: string } | undefined;
  readonly host: string;
  /** 0 takes any free port. */
  readonly port: number;
}

/** The same, checked. */
export interface CheckedSettings {
  readonly appId: string;
  readonly appType: AppType;
  readonly tenantId?: string;
  readonly password?: string;
  readonly certificate?: { readonly thumbprint: string; readonly privateKey: string };
  readonly host: string;
  readonly port: number;
}

/** What is wrong with the settings, one clear sentence each. */
class TeamsSettingsError extends Error {
  readonly code = "teams-settings";
  readonly problems: readonly string[];

  constructor(problems: readonly string[]) {
    super(problems.join(" "));
    this.problems = problems;
  }
}

const GUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;

/**
 * Checks what the library would let pass: with an empty app id it serves requests that nobody signed, and an unknown or
 * missing type of app counts as one for every tenant.
 */
export function checkSettings(settings: TeamsSettings): CheckedSettings {
  const appId = settings.appId?.trim() ?? "";
  const tenantId = settings.tenantId?.trim().toLowerCase();
  const password = settings.password?.trim();
  const typed = settings.appType?.trim() || "SingleTenant";
  const appType = APP_TYPES.find((type) => type.toLowerCase() === typed.toLowerCase());
  const problems = [
    ...(appId === "" ? ["The Teams app id is empty; type the id of the bot's registration."] : []),
    ...(appId !== "" && !GUID.test(appId)
      ? ["The Teams app id is not an id like 12345678-1234-1234-1234-123456789abc."]
      : []),
    ...(appType === undefined
      ? [`The Teams app type “${typed}” is unknown; type one of ${APP_TYPES.join(", ")}.`]
      : []),
    ...(appType && appType !== "MultiTenant" && !GUID.test(tenantId ?? "")
      ? [`A ${appType} Teams app needs the id of its tenant, like 12345678-1234-1234-1234-123456789abc.`]
      : []),
    ...credentialProblems(appType, password, settings.certificate !== undefined),
  ];
  if (appType === undefined || problems.length > 0) throw new TeamsSettingsError(problems);
  const { certificate, host, port } = settings;
  return {
    appId,
    appType,
    host,
    port,
    ...(tenantId && { tenantId }),
    ...(password && { password }),
    ...(certificate && { certificate }),
  };
}

function credentialProblems(
  appType: AppType | undefined,
  password: string | undefined,
  hasCertificate: boolean,
): string[] {
  if (appType === "UserAssignedMsi")
    return password || hasCertificate
      ? ["A UserAssignedMsi Teams app has no password and no certificate; remove them."]
      : [];
  if (password && hasCertificate) return ["The Teams app has a password and a certificate; keep one of them."];
  return password || hasCertificate ? [] : ["The Teams app needs its password or its certificate."];
}
