/** What an organisation gave Oldhand to speak there with. Secret: never logged, never shown. */
export interface Access {
  readonly token: string;
  /** Exchanged for a new token once; left out where tokens do not expire. */
  readonly refreshToken?: string;
  readonly expires_ms?: number;
}

/** A Slack organisation that let Oldhand in. */
export interface Installation {
  /** The platform's own id of the organisation. */
  readonly team: string;
  readonly name: string;
  /** The platform's own id of Oldhand there. */
  readonly botUser: string;
  readonly scopes: readonly string[];
  /** The platform's own id of the person who let it in. */
  readonly installedBy: string;
  readonly installed_ms: number;
  readonly access: Access;
}
export interface KeptInstallation extends Installation {
  /** Counts up with every change of the access. */
  readonly version: number;
}

/** The organisations that let Oldhand in; their tokens are kept sealed. */
export interface Installations {
  find(team: string): Promise<KeptInstallation | undefined>;
  /** The organisation behind a workspace. */
  findOf(workspace: string): Promise<KeptInstallation | undefined>;
  /** Keeps one anew, or in the place of an earlier one, and opens its workspace. */
  save(installation: Installation): Promise<void>;
  /** @returns false when the access was changed or removed since `kept` was read, and then nothing is written */
  renew(kept: KeptInstallation, access: Access): Promise<boolean>;
  /**
   * Deletes an installation with its tokens.
   * @param said_ms when the platform said so; one that was made later stays
   */
  remove(team: string, said_ms: number): Promise<boolean>;
}
