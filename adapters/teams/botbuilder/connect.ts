import { ConfigurationBotFrameworkAuthentication, ConfigurationServiceClientCredentialFactory } from "botbuilder";
import type { ConnectorClient, ServiceClientCredentialsFactory } from "botframework-connector";
import { recordAt } from "../payload.ts";
import type { CheckedSettings } from "../settings.ts";

/** Who signs what Teams sends. @source Microsoft, botframework-connector 4.23.3, AuthenticationConstants */
export const CHANNEL_ISSUER = "https://api.botframework.com";
const LOGIN = "https://login.microsoftonline.com/botframework.com";
/** Longest wait for one answer of the platform. Our own choice. */
const REQUEST_TIMEOUT_ms = 15_000;
export const REQUEST_OPTIONS = { timeout: REQUEST_TIMEOUT_ms };

export interface StandIns {
  /** Stands in for the credentials that need the platform's sign-in service. */
  readonly credentials?: ServiceClientCredentialsFactory | undefined;
  /** Stands in for the platform's document that names its signing keys. */
  readonly openIdMetadataUrl?: string | undefined;
}

/** The two sides of proving who speaks: the platform to us, and we to it. */
export interface Authentication {
  readonly inbound: ConfigurationBotFrameworkAuthentication;
  /** A token for what the library's client does not fetch. */
  readonly token: () => Promise<string>;
}

export function openAuthentication(settings: CheckedSettings, standIns: StandIns): Authentication {
  const options = authenticationOptions(settings, standIns);
  const credentials = standIns.credentials ?? new ConfigurationServiceClientCredentialFactory(options);
  return {
    inbound: new ConfigurationBotFrameworkAuthentication(options, credentials),
    token: async () => {
      const own: unknown = await credentials.createCredentials(settings.appId, CHANNEL_ISSUER, LOGIN, true);
      const hasToken = typeof own === "object" && own !== null && "getToken" in own;
      const token: unknown = hasToken && typeof own.getToken === "function" ? await own.getToken() : undefined;
      if (typeof token !== "string") throw new Error("The bot library gave no token.");
      return token;
    },
  };
}

/**
 * Options of the library. As soon as one of the addresses is set, it takes all others from here too and leaves the
 * missing ones blank, so they are set all together or not at all.
 */
export function authenticationOptions(
  settings: CheckedSettings,
  { openIdMetadataUrl }: StandIns,
): Record<string, string> {
  const { appId, appType, tenantId, password, certificate } = settings;
  return {
    MicrosoftAppId: appId,
    MicrosoftAppType: appType,
    ...(tenantId && { MicrosoftAppTenantId: tenantId }),
    ...(password && { MicrosoftAppPassword: password }),
    ...(certificate && {
      CertificateThumbprint: certificate.thumbprint,
      CertificatePrivateKey: certificate.privateKey,
    }),
    ...(openIdMetadataUrl && {
      ToChannelFromBotLoginUrl: LOGIN,
      ToChannelFromBotOAuthScope: CHANNEL_ISSUER,
      ToBotFromChannelTokenIssuer: CHANNEL_ISSUER,
      OAuthUrl: CHANNEL_ISSUER,
      ToBotFromChannelOpenIdMetadataUrl: openIdMetadataUrl,
      ToBotFromEmulatorOpenIdMetadataUrl: openIdMetadataUrl,
      CallerId: "urn:botframework:azure",
    }),
  };
}

/**
 * Takes the library's own retries out of a client: they leave out 412 and a 429 without a time, and wait for any time
 * that an answer names. The client keeps its pipeline private; the exact version is pinned and a test counts attempts.
 */
export function dropLibraryRetries(connector: ConnectorClient): void {
  const pipeline = recordAt(connector, "client", "pipeline");
  if (!(pipeline && "removePolicy" in pipeline && typeof pipeline.removePolicy === "function"))
    throw new Error("The bot library keeps its retries in another place than in version 4.23.3.");
  pipeline.removePolicy({ name: "defaultRetryPolicy" });
}
